package sagwright.workshop;

import java.time.Instant;
import java.util.List;

/** Guesses by hand, to be held against what the bench then showed. */
public final class Guesses {
  private final Database database;
  private final Actions actions;

  Guesses(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /**
   * @param stiffnessNPerMm above 0
   */
  public void add(long runId, double stiffnessNPerMm) throws WorkshopException {
    database.write(
        handle ->
            handle.execute(
                "insert into guess (action_id, run_id, stiffness_n_mm) values (?, ?, ?)",
                actions.begin(handle, "guessed before run " + runId, true),
                runId,
                stiffnessNPerMm));
  }

  /** All guesses that were not undone, oldest first. */
  public List<Guess> all() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select a.at, a.initials, g.run_id, g.stiffness_n_mm from guess g"
                        + " join action a on a.id = g.action_id and a.undone_at is null"
                        + " order by g.id")
                .map(
                    (row, context) ->
                        new Guess(
                            Instant.parse(row.getString("at")),
                            row.getLong("run_id"),
                            row.getDouble("stiffness_n_mm"),
                            row.getString("initials")))
                .list());
  }
}
