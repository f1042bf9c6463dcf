package sagwright.workshop;

import java.util.List;
import java.util.Optional;

/** The calibrations of a workshop's bench. Each is kept; the newest is in force. */
public final class Calibrations {
  private static final String ALL =
      "select c.document from calibration c"
          + " join action a on a.id = c.action_id and a.undone_at is null order by c.id desc";

  private final Database database;
  private final Actions actions;

  Calibrations(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /**
   * @param document a {@code sagwright-calibration/1}
   */
  public void add(String document) throws WorkshopException {
    database.write(
        handle ->
            handle.execute(
                "insert into calibration (action_id, document) values (?, ?)",
                actions.begin(handle, "calibrated the bench", true),
                document));
  }

  /** The document of the one in force. */
  public Optional<String> inForce() throws WorkshopException {
    return database.read(handle -> handle.select(ALL).mapTo(String.class).findFirst());
  }

  /** All documents, newest first. */
  public List<String> all() throws WorkshopException {
    return database.read(handle -> handle.select(ALL).mapTo(String.class).list());
  }
}
