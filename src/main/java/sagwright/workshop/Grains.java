package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import sagwright.wood.Grain;

/** How the grain of blanks looked. */
public final class Grains {
  private static final String ENTRIES =
      "select g.blank_id, g.lines_per_cm, g.run_out, g.looks, a.at, a.initials"
          + " from grain_entry g join action a on a.id = g.action_id and a.undone_at is null";

  private final Database database;
  private final Actions actions;

  Grains(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /** A blank was looked at. */
  public void add(Blank blank, Grain grain) throws WorkshopException {
    database.write(
        handle -> {
          long actionId = actions.begin(handle, "looked at the grain of " + blank.tag(), true);
          add(handle, blank, grain, actionId);
          return null;
        });
  }

  static void add(Handle handle, Blank blank, Grain grain, long actionId) {
    handle.execute(
        "insert into grain_entry (action_id, blank_id, lines_per_cm, run_out, looks)"
            + " values (?, ?, ?, ?, ?)",
        actionId,
        blank.id(),
        grain.linesPerCm(),
        grain.runOut() == null ? null : grain.runOut().name(),
        grain.looks());
  }

  /** A blank's entries that were not undone, oldest first. */
  public List<GrainEntry> of(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(ENTRIES + " where g.blank_id = ? order by g.id", blank.id())
                .map((row, context) -> entryOf(row))
                .list());
  }

  /** How it looked last; empty where nobody has looked. */
  public Optional<Grain> now(Blank blank) throws WorkshopException {
    List<GrainEntry> all = of(blank);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1).grain());
  }

  /** How all blanks looked last, by the numbers of those that somebody has looked at. */
  public Map<Long, Grain> allNow() throws WorkshopException {
    return database.readPlainly(
        connection -> {
          Map<Long, Grain> newest = new HashMap<>();
          PlainRows.each(
              connection,
              ENTRIES + " order by g.id",
              row -> newest.put(row.getLong(1), grainOf(row)));
          return newest;
        });
  }

  private static GrainEntry entryOf(ResultSet row) throws SQLException {
    return new GrainEntry(Instant.parse(row.getString(5)), grainOf(row), row.getString(6));
  }

  private static Grain grainOf(ResultSet row) throws SQLException {
    double lines = row.getDouble(2);
    boolean isCounted = !row.wasNull();
    String runOut = row.getString(3);
    return new Grain(
        isCounted ? Double.valueOf(lines) : null,
        runOut == null ? null : Grain.RunOut.valueOf(runOut),
        row.getString(4));
  }
}
