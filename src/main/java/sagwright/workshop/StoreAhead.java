package sagwright.workshop;

import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import sagwright.sheet.JsonLine;

/**
 * Loads SQLite and the JSON library on a thread of its own while a command is still being read: a
 * program that has just started would wait for them, a fifth of a second or more. What cannot be
 * loaded is complained of where it is wanted.
 */
public final class StoreAhead {
  private StoreAhead() {}

  /** Begins at once, and does not keep the program from ending. */
  public static void load() {
    Thread thread = new Thread(StoreAhead::loadAll, "store ahead");
    thread.setDaemon(true);
    thread.start();
  }

  private static void loadAll() {
    try {
      new SQLiteConfig().createConnection("jdbc:sqlite::memory:").close();
    } catch (SQLException e) {
      return;
    }
    JsonLine.parse("{}");
  }
}
