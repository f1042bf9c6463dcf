package sagwright.workshop;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;

/** The calibrations of a workshop's bench. Each is kept; the newest is in force. */
public final class Calibrations {
  private static final String ALL =
      "select c.document, a.at, a.initials from calibration c"
          + " join action a on a.id = c.action_id and a.undone_at is null order by c.id desc";

  private static final RowMapper<KeptCalibration> KEPT =
      (row, context) ->
          new KeptCalibration(
              Instant.parse(row.getString("at")),
              row.getString("initials"),
              row.getString("document"));

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

  /** The one in force. */
  public Optional<KeptCalibration> inForce() throws WorkshopException {
    return database.read(handle -> handle.select(ALL).map(KEPT).findFirst());
  }

  /** All, newest first. */
  public List<KeptCalibration> all() throws WorkshopException {
    return database.read(handle -> handle.select(ALL).map(KEPT).list());
  }
}
