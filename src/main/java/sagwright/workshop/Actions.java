package sagwright.workshop;

import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** What was done to the records, and the undoing of it. */
public final class Actions {
  private static final RowMapper<Action> ACTION =
      (row, context) ->
          new Action(
              row.getLong("id"),
              Instant.parse(row.getString("at")),
              row.getString("what"),
              row.getString("initials"),
              row.getBoolean("undoable"));

  private final Database database;
  private final InstantSource clock;

  Actions(Database database, InstantSource clock) {
    this.database = database;
    this.clock = clock;
  }

  /** The newest actions that were not undone, newest first. */
  public List<Action> newest(int most) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select * from action where undone_at is null order by id desc limit ?", most)
                .map(ACTION)
                .list());
  }

  /** The action that {@link #undoLast} would undo. */
  public Optional<Action> lastUndoable() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select * from action where undone_at is null and undoable = 1"
                        + " order by id desc limit 1")
                .map(ACTION)
                .findFirst());
  }

  /**
   * Undoes the newest action that can be undone.
   *
   * @return what was undone
   */
  public Action undoLast() throws WorkshopException {
    return database.write(
        handle -> {
          Action last =
              lastUndoable().orElseThrow(() -> new WorkshopException("there is nothing to undo"));
          requireNothingHangsOn(handle, last);
          handle.execute("update action set undone_at = ? where id = ?", now(), last.id());
          handle.execute("update blank set withdrawn = 1 where action_id = ?", last.id());
          handle.execute("update cue_order set withdrawn = 1 where action_id = ?", last.id());
          return last;
        });
  }

  private static void requireNothingHangsOn(Handle handle, Action action) throws WorkshopException {
    boolean hasRun =
        handle
            .select(
                "select 1 from blank b join run r on r.blank_id = b.id where b.action_id = ?"
                    + " union all"
                    + " select 1 from blank b join run_move_now m on m.to_blank_id = b.id"
                    + " where b.action_id = ?",
                action.id(),
                action.id())
            .mapTo(Integer.class)
            .findFirst()
            .isPresent();
    if (hasRun) {
      throw new WorkshopException(
          "\"" + action.what() + "\" cannot be undone: there are runs on that blank");
    }
  }

  /** Enters an action; the rows that it writes name it. */
  long begin(Handle handle, String what, boolean undoable) {
    return begin(handle, what, undoable, null);
  }

  /**
   * @param initials whose hand it was; null for the one that the shop has set
   */
  long begin(Handle handle, String what, boolean undoable, String initials) {
    return handle
        .createUpdate(
            "insert into action (at, what, initials, undoable) values (:at, :what,"
                + " coalesce(:initials, (select nullif(value, '') from setting where name = :set)),"
                + " :undoable)")
        .bind("at", now())
        .bind("what", what)
        .bind("initials", initials)
        .bind("set", Settings.INITIALS)
        .bind("undoable", undoable ? 1 : 0)
        .executeAndReturnGeneratedKeys("id")
        .mapTo(Long.class)
        .one();
  }

  String now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS).toString();
  }
}
