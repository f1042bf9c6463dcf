package sagwright.workshop;

import java.sql.SQLException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteJDBCLoader;
import sagwright.sheet.JsonLine;

/**
 * Loads SQLite and what reads JSON while a command is still being read, on threads of their own: a
 * program that has just started would wait for them, a fifth of a second or more. What cannot be
 * loaded is complained of where it is wanted.
 */
public final class StoreAhead {
  private StoreAhead() {}

  /** Begins at once, and does not keep the program from ending. */
  public static void load() {
    start("SQLite's library ahead", StoreAhead::loadLibrary);
    start("store ahead", StoreAhead::loadClasses);
  }

  private static void start(String name, Runnable loading) {
    Thread thread = new Thread(loading, name);
    thread.setDaemon(true);
    thread.setUncaughtExceptionHandler((where, failure) -> {});
    thread.start();
  }

  private static void loadLibrary() {
    try {
      SQLiteJDBCLoader.initialize();
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static void loadClasses() {
    JsonLine.parse("{}");
    try {
      new SQLiteConfig().createConnection("jdbc:sqlite::memory:").close();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }
}
