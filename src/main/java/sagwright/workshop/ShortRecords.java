package sagwright.workshop;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jdbi.v3.core.statement.PreparedBatch;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SheetReader;

/** Thousands of records in short, read at once: plain queries that are put together here. */
public final class ShortRecords {
  private static final String BLANKS =
      "select b.id, c.id, f.outline, b.tag,"
          + " (select stage from stage_now s where s.blank_id = b.id),"
          + " (select o.number from promise_now p join cue_order o on o.id = p.order_id"
          + "   where p.blank_id = b.id),"
          + " (select why from blank_end_now e where e.blank_id = b.id),"
          + " case when "
          + ShortShaft.WANTS_DOCUMENT
          + " then c.document end"
          + " from blank_now b join caliper_now c on c.blank_id = b.id"
          + " left join caliper_figures f on f.caliper_entry_id = c.id";

  private static final String RUNS =
      "select n.id, n.blank_id, n.evaluation_id, n.started_ms, f.figures,"
          + " case when "
          + ShortAnswer.WANTS_DOCUMENTS
          + " then n.answer end,"
          + " case when "
          + ShortAnswer.WANTS_DOCUMENTS
          + " then n.document end"
          + " from (select * from run_now where set_aside = 0 and answer is not null) n"
          + " left join evaluation_figures f on f.evaluation_id = n.evaluation_id";

  private static final String SURVEYED = "select blank_id, basis, document from surveyed_wood";

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
    List<ShortRecord> records = new ArrayList<>();
    forEach(records::add);
    return records;
  }

  /**
   * Hands over the same one by one as they are read; who takes them keeps the reading waiting, and
   * must not itself wait for the workshop.
   */
  public void forEach(Consumer<ShortRecord> taking) throws WorkshopException {
    database.readPlainly(connection -> read(connection, null, taking));
  }

  /** One blank's. */
  public ShortRecord of(Blank blank) throws WorkshopException {
    List<ShortRecord> records = new ArrayList<>(1);
    database.readPlainly(connection -> read(connection, blank.id(), records::add));
    return records.get(0);
  }

  /**
   * @param onlyOf a blank's number; null for all blanks
   */
  private Void read(Connection connection, Long onlyOf, Consumer<ShortRecord> taking)
      throws SQLException, WorkshopException {
    Map<Long, List<ShortRun>> runs = new HashMap<>();
    PlainRows.each(
        connection,
        select(RUNS, "n.blank_id", onlyOf),
        row -> addRun(runs, row.getLong(2), runOf(row)));
    Map<String, String> surveyed = new HashMap<>();
    if (runs.values().stream().anyMatch(ofBlank -> ofBlank.size() > 1)) {
      PlainRows.each(
          connection,
          select(SURVEYED, "blank_id", onlyOf),
          row -> surveyed.put(key(row.getLong(1), row.getString(2)), row.getString(3)));
    }
    PlainRows.each(
        connection,
        select(BLANKS, "b.id", onlyOf),
        row -> taking.accept(recordOf(row, runs, surveyed)));
    return null;
  }

  private static String select(String all, String blankId, Long onlyOf) {
    return onlyOf == null ? all : all + " where " + blankId + " = " + onlyOf;
  }

  private static void addRun(Map<Long, List<ShortRun>> runs, Long blankId, ShortRun run) {
    List<ShortRun> before = runs.putIfAbsent(blankId, List.of(run));
    if (before != null) {
      List<ShortRun> all = new ArrayList<>(before);
      all.add(run);
      all.sort(OLDEST_FIRST);
      runs.put(blankId, all);
    }
  }

  private static String key(long blankId, String basis) {
    return blankId + ":" + basis;
  }

  private static ShortRun runOf(ResultSet row) throws SQLException {
    return new ShortRun(
        row.getLong(1),
        row.getLong(3),
        row.getLong(4),
        answerOf(row.getBytes(5), row.getString(6), row.getString(7)));
  }

  private static Supplier<ShortAnswer> answerOf(byte[] figures, String answer, String document) {
    return () ->
        ShortAnswer.canUnpack(figures)
            ? ShortAnswer.unpacked(figures)
            : ShortAnswer.of(answer, document);
  }

  private ShortRecord recordOf(
      ResultSet row, Map<Long, List<ShortRun>> runs, Map<String, String> surveyed)
      throws SQLException {
    // each kind of column in one place: a call for each column takes the compiler four times as
    // long
    long[] ids = new long[2];
    for (int i = 0; i < ids.length; i++) {
      ids[i] = row.getLong(1 + i);
    }
    String[] texts = new String[5];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = row.getString(4 + i);
    }
    Blank blank = new Blank(ids[0], texts[0]);
    List<ShortRun> counting = runs.getOrDefault(blank.id(), List.of());
    return new ShortRecord(
        blank,
        new BlankState(texts[1], texts[2], texts[3]),
        ids[1],
        shaftOf(blank, row.getBytes(3), texts[4]),
        counting,
        counting.size() < 2 ? null : surveyed.get(key(blank.id(), ShortRecord.basis(counting))));
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

  /**
   * What a survey has found of a blank's wood.
   *
   * @param basis the answers that it rests on
   */
  public record SurveyedWood(long blankId, String basis, String document) {}

  /** Keeps surveys, all at once. */
  public void keep(Collection<SurveyedWood> surveyed) throws WorkshopException {
    database.write(
        handle -> {
          PreparedBatch batch =
              handle.prepareBatch(
                  "insert into surveyed_wood (blank_id, basis, document) values (?, ?, ?)");
          for (SurveyedWood each : surveyed) {
            batch.add(each.blankId(), each.basis(), each.document());
          }
          return batch.execute();
        });
  }
}
