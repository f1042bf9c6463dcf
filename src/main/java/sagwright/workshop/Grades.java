package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
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
   * @param initials of who asked for it, null for those that the shop has set
   * @return its number
   */
  public long add(Blank blank, GradeBasis basis, String answer, String initials)
      throws WorkshopException {
    return database.write(
        handle ->
            insert(
                handle,
                actions.begin(handle, "graded " + blank.tag(), true, initials),
                blank,
                basis,
                answer));
  }

  /**
   * Stores a grade that follows an older one because something has changed that it rests on. It is
   * not undone by itself: undoing the change grades once more.
   *
   * @return its number
   */
  public long addAgain(Blank blank, GradeBasis basis, String answer) throws WorkshopException {
    return database.write(
        handle ->
            insert(
                handle,
                actions.begin(handle, "graded " + blank.tag() + " again", false),
                blank,
                basis,
                answer));
  }

  private long insert(Handle handle, long actionId, Blank blank, GradeBasis basis, String answer) {
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
      handle.execute("insert into grade_run (grade_id, run_id) values (?, ?)", gradeId, runId);
    }
    return gradeId;
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
                .map((row, context) -> grade(handle, row))
                .list());
  }

  /**
   * A grade that somebody may still rely on: neither its blank nor its order has ended, the blank
   * is no finished cue yet, and there is no newer one of the two.
   */
  public record Standing(Blank blank, Grade grade) {}

  /** Those of one blank. */
  public List<Standing> standingOf(Blank blank) throws WorkshopException {
    return standing(" and b.id = " + blank.id());
  }

  /** Those for one order. */
  public List<Standing> standingFor(WorkshopOrder order) throws WorkshopException {
    return standing(" and o.id = " + order.id());
  }

  /** All of them. */
  public List<Standing> standing() throws WorkshopException {
    return standing("");
  }

  private List<Standing> standing(String of) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(STANDING + of + " order by g.id")
                .map(
                    (row, context) ->
                        new Standing(
                            new Blank(row.getLong("blank_id"), row.getString("tag")),
                            grade(handle, row)))
                .list());
  }

  /** Whether it was an action that graded a blank. */
  public boolean isEnteredBy(Action action) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select 1 from grade where action_id = ?", action.id())
                .mapTo(Integer.class)
                .findFirst()
                .isPresent());
  }

  private static final String STANDING =
      "select g.*, o.number, b.tag from grade_now g"
          + " join order_version v on v.id = g.order_version_id"
          + " join order_now o on o.id = v.order_id"
          + " join blank_now b on b.id = g.blank_id"
          + " where g.id = (select max(n.id) from grade_now n"
          + "   join order_version w on w.id = n.order_version_id"
          + "   where n.blank_id = g.blank_id and w.order_id = v.order_id)"
          + " and o.id not in (select order_id from order_end_now)"
          + " and b.id not in (select blank_id from blank_end_now)"
          + " and b.id not in (select blank_id from stage_now where stage = '"
          + BlankState.FINISHED_CUE
          + "')";

  private static Grade grade(Handle handle, ResultSet row) throws SQLException {
    return new Grade(
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
        row.getString("initials"));
  }

  private static List<Long> runsOf(Handle handle, long gradeId) {
    return handle
        .select("select run_id from grade_run where grade_id = ? order by run_id", gradeId)
        .mapTo(Long.class)
        .list();
  }
}
