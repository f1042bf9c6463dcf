package sagwright.workshop;

import java.time.Instant;
import java.util.List;

/** Notes on blanks. */
public final class Notes {
  private final Database database;
  private final Actions actions;

  Notes(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  public void add(Blank blank, String words) throws WorkshopException {
    database.write(
        handle -> {
          long actionId = actions.begin(handle, "noted on " + blank.tag(), true);
          return handle.execute(
              "insert into note (action_id, blank_id, words) values (?, ?, ?)",
              actionId,
              blank.id(),
              words);
        });
  }

  /** A blank's notes, oldest first. */
  public List<Note> of(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select a.at, a.initials, n.words from note n join action a"
                        + " on a.id = n.action_id and a.undone_at is null"
                        + " where n.blank_id = ? order by n.id",
                    blank.id())
                .map(
                    (row, context) ->
                        new Note(
                            Instant.parse(row.getString("at")),
                            row.getString("words"),
                            row.getString("initials")))
                .list());
  }
}
