package sagwright.workshop;

import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** The grades that blanks were given. A newer one follows, the older stay. */
public final class Grades {
  private final Database database;
  private final Actions actions;
  private final Keeper keeper;

  Grades(Database database, Actions actions, Keeper keeper) {
    this.database = database;
    this.actions = actions;
    this.keeper = keeper;
  }

  /**
   * Stores a grade on a blank's record.
   *
   * @param answer of docs/contract.md, section 5
   * @return its number
   */
  public long add(Blank blank, GradeBasis basis, String answer) throws WorkshopException {
    return database.write(
        handle -> {
          long actionId = actions.begin(handle, "graded " + blank.tag(), true);
          long gradeId =
              handle
                  .createUpdate(
                      "insert into grade (action_id, blank_id, order_version_id, caliper_entry_id,"
                          + " sureness, program, answer) values (:action, :blank, :version,"
                          + " :caliper, :sureness, :program, :answer)")
                  .bind("action", actionId)
                  .bind("blank", blank.id())
                  .bind("version", basis.orderVersionId())
                  .bind("caliper", basis.caliperEntryId())
                  .bind("sureness", basis.sureness())
                  .bind("program", keeper.program())
                  .bind("answer", answer)
                  .executeAndReturnGeneratedKeys("id")
                  .mapTo(Long.class)
                  .one();
          for (long runId : basis.runIds()) {
            handle.execute(
                "insert into grade_run (grade_id, run_id) values (?, ?)", gradeId, runId);
          }
          return gradeId;
        });
  }

  /** A blank's grades that were not undone, oldest first. */
  public List<Grade> of(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select g.*, o.number from grade_now g"
                        + " join order_version v on v.id = g.order_version_id"
                        + " join cue_order o on o.id = v.order_id"
                        + " where g.blank_id = ? order by g.id",
                    blank.id())
                .map(
                    (row, context) ->
                        new Grade(
                            row.getLong("id"),
                            Instant.parse(row.getString("at")),
                            row.getString("number"),
                            new GradeBasis(
                                row.getLong("order_version_id"),
                                row.getLong("caliper_entry_id"),
                                runsOf(handle, row.getLong("id")),
                                row.getDouble("sureness")),
                            row.getString("answer"),
                            row.getString("program"),
                            row.getString("initials")))
                .list());
  }

  private static List<Long> runsOf(Handle handle, long gradeId) {
    return handle
        .select("select run_id from grade_run where grade_id = ? order by run_id", gradeId)
        .mapTo(Long.class)
        .list();
  }
}
