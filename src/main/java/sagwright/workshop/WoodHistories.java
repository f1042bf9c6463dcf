package sagwright.workshop;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SheetReader;

/** When blanks came, were turned and were weighed: of thousands at once. */
public final class WoodHistories {
  private static final String ENTRIES =
      "select e.blank_id, a.at, f.outline,"
          + " case when "
          + ShortShaft.WANTS_DOCUMENT
          + " then e.document end"
          + " from caliper_entry e join action a on a.id = e.action_id and a.undone_at is null"
          + " left join caliper_figures f on f.caliper_entry_id = e.id";

  private static final String STAGES =
      "select e.blank_id, a.at from stage_entry e"
          + " join action a on a.id = e.action_id and a.undone_at is null";

  private final Database database;
  private final SheetReader reader;

  WoodHistories(Database database, SheetReader reader) {
    this.database = database;
    this.reader = reader;
  }

  /** By the numbers of the blanks. */
  public Map<Long, WoodHistory> all() throws WorkshopException {
    return database.readPlainly(this::read);
  }

  private Map<Long, WoodHistory> read(Connection connection)
      throws SQLException, WorkshopException {
    Map<Long, WoodHistory> histories = new HashMap<>();
    PlainRows.each(
        connection,
        ENTRIES + " order by e.id",
        row -> {
          Instant at = Instant.parse(row.getString(2));
          histories
              .computeIfAbsent(row.getLong(1), blank -> new WoodHistory(at))
              .add(at, shaftOf(row));
        });
    PlainRows.each(
        connection,
        STAGES + " order by e.id",
        row -> histories.get(row.getLong(1)).turned(Instant.parse(row.getString(2))));
    return histories;
  }

  private ShortShaft shaftOf(ResultSet row) throws SQLException, WorkshopException {
    byte[] outline = row.getBytes(3);
    if (ShortShaft.canUnpack(outline)) {
      return ShortShaft.unpacked(outline);
    }
    try {
      return ShortShaft.of(reader.read(row.getString(4)));
    } catch (BadDocumentException e) {
      throw new WorkshopException("a stored shaft cannot be read: " + e.getMessage());
    }
  }
}
