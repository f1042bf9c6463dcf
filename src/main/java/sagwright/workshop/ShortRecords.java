package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SheetReader;

/** Thousands of records in short, read at once: plain queries that are put together here. */
public final class ShortRecords {
  private static final String BLANKS =
      "select b.id, b.tag, c.id, f.outline,"
          + " case when "
          + ShortShaft.WANTS_DOCUMENT
          + " then c.document end,"
          + " (select stage from stage_now s where s.blank_id = b.id),"
          + " (select o.number from promise_now p join cue_order o on o.id = p.order_id"
          + "   where p.blank_id = b.id),"
          + " (select why from blank_end_now e where e.blank_id = b.id)"
          + " from blank_now b join caliper_now c on c.blank_id = b.id"
          + " left join caliper_figures f on f.caliper_entry_id = c.id";

  private static final String RUNS =
      "select n.id, n.blank_id, n.evaluation_id,"
          + " n.answer -> '$.modulusMPa', n.answer -> '$.modulusStdUncertaintyMPa',"
          + " n.document -> '$.modulusToShearRatio', n.document ->> '$.shaft.species',"
          + " n.answer -> '$.assumed', n.answer -> '$.warnings', n.started_ms"
          + " from (select * from run_now where set_aside = 0 and answer is not null) n";

  private static final Comparator<ShortRun> OLDEST_FIRST =
      Comparator.comparingLong(ShortRun::startedMs).thenComparingLong(ShortRun::runId);

  private final Database database;
  private final SheetReader reader;

  ShortRecords(Database database, SheetReader reader) {
    this.database = database;
    this.reader = reader;
  }

  /** Every blank that was not withdrawn, in no order. */
  public List<ShortRecord> all() throws WorkshopException {
    return database.read(handle -> records(handle, BLANKS, RUNS));
  }

  /** One blank's. */
  public ShortRecord of(Blank blank) throws WorkshopException {
    return database
        .read(
            handle ->
                records(
                    handle,
                    BLANKS + " where b.id = " + blank.id(),
                    RUNS + " where n.blank_id = " + blank.id()))
        .get(0);
  }

  /** Without Jdbi, which takes as long again over each row as SQLite itself. */
  private List<ShortRecord> records(Handle handle, String blanks, String runsThatCount)
      throws WorkshopException {
    try (Statement statement = handle.getConnection().createStatement()) {
      Map<Long, List<ShortRun>> runs = new HashMap<>();
      try (ResultSet row = statement.executeQuery(runsThatCount)) {
        while (row.next()) {
          runs.computeIfAbsent(row.getLong(2), blank -> new ArrayList<>(1)).add(runOf(row));
        }
      }
      runs.values().forEach(ofBlank -> ofBlank.sort(OLDEST_FIRST));
      List<ShortRecord> records = new ArrayList<>();
      try (ResultSet row = statement.executeQuery(blanks)) {
        while (row.next()) {
          records.add(recordOf(row, runs));
        }
      }
      return records;
    } catch (SQLException e) {
      throw Faults.inWords(e, database.file());
    }
  }

  /** Columns by their places: looking their names up takes longer than reading them. */
  private static ShortRun runOf(ResultSet row) throws SQLException {
    String ratio = row.getString(6);
    return new ShortRun(
        row.getLong(1),
        row.getLong(3),
        // as text: SQLite's own reading of a number may be off in the last digit
        Double.parseDouble(row.getString(4)),
        Double.parseDouble(row.getString(5)),
        ratio == null ? null : Double.valueOf(ratio),
        ratio == null ? row.getString(7) : null,
        row.getString(8),
        row.getString(9),
        row.getLong(10));
  }

  private ShortRecord recordOf(ResultSet row, Map<Long, List<ShortRun>> runs) throws SQLException {
    Blank blank = new Blank(row.getLong(1), row.getString(2));
    return new ShortRecord(
        blank,
        new BlankState(row.getString(6), row.getString(7), row.getString(8)),
        row.getLong(3),
        shaftOf(blank, row.getBytes(4), row.getString(5)),
        runs.getOrDefault(blank.id(), List.of()));
  }

  private Supplier<ShortShaft> shaftOf(Blank blank, byte[] outline, String document) {
    return () -> {
      if (ShortShaft.canUnpack(outline)) {
        return ShortShaft.unpacked(outline);
      }
      try {
        return ShortShaft.of(reader.read(document));
      } catch (BadDocumentException e) {
        throw new IllegalStateException(
            "a stored shaft cannot be read: " + blank.tag() + ": " + e.getMessage(), e);
      }
    };
  }

  /** What was kept of a survey of exactly these answers. */
  public Optional<String> surveyedWood(ShortRecord of) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select document from surveyed_wood where blank_id = ? and basis = ?",
                    of.blank().id(),
                    of.basis())
                .mapTo(String.class)
                .findFirst());
  }

  /** Keeps a survey of exactly these answers. */
  public void keepSurveyedWood(ShortRecord of, String document) throws WorkshopException {
    database.write(
        handle ->
            handle.execute(
                "insert into surveyed_wood (blank_id, basis, document) values (?, ?, ?)",
                of.blank().id(),
                of.basis(),
                document));
  }
}
