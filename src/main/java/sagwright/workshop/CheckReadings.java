package sagwright.workshop;

import java.time.Instant;
import java.util.List;

/** What the check rod showed, day by day. */
public final class CheckReadings {
  private final Database database;
  private final Actions actions;

  CheckReadings(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /**
   * Adds a reading, which may be a slip of the hand and be undone; its moment is now, whatever it
   * says itself.
   */
  public void add(CheckReading reading) throws WorkshopException {
    database.write(
        handle ->
            handle.execute(
                "insert into check_reading (action_id, rod, document, answer) values (?, ?, ?, ?)",
                actions.begin(handle, "checked the bench on " + reading.rod(), true),
                reading.rod(),
                reading.sheet(),
                reading.answer()));
  }

  /** All readings of one rod that were not undone, oldest first. */
  public List<CheckReading> of(String rod) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select a.at, c.* from check_reading c"
                        + " join action a on a.id = c.action_id and a.undone_at is null"
                        + " where c.rod = ? order by c.id",
                    rod)
                .map(
                    (row, context) ->
                        new CheckReading(
                            Instant.parse(row.getString("at")),
                            row.getString("rod"),
                            row.getString("document"),
                            row.getString("answer")))
                .list());
  }
}
