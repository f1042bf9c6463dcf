package sagwright.workshop;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteException;

/** What SQLite complains of, in words for people. */
final class Faults {
  /** Twice what the index takes. */
  private static final long LEAST_ROOM_BYTES = 65_536;

  private Faults() {}

  /** The complaint behind an exception; the exception itself where SQLite has no part in it. */
  static WorkshopException inWords(RuntimeException thrown, Path file) {
    for (Throwable t = thrown; t != null; t = t.getCause()) {
      if (t instanceof SQLException sql) {
        return inWords(sql, file);
      }
    }
    throw thrown;
  }

  static WorkshopException inWords(SQLException thrown, Path file) {
    return new WorkshopException("the workshop " + file + " " + whatIsWrong(thrown, file), thrown);
  }

  private static String whatIsWrong(SQLException thrown, Path file) {
    String code =
        thrown instanceof SQLiteException sqlite ? sqlite.getResultCode().name() : "UNKNOWN";
    if (code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED")) {
      return "is being written by another program: try again when that is done";
    }
    if (code.startsWith("SQLITE_NOTADB")) {
      return "is damaged, or is no workshop";
    }
    if (code.startsWith("SQLITE_CORRUPT")) {
      return "is damaged: bring back a backup of it, and keep this file";
    }
    boolean isFault = code.startsWith("SQLITE_IOERR");
    if (code.startsWith("SQLITE_FULL") || (isFault && isFull(file))) {
      return "cannot be written: the disk is full: make room on it";
    }
    if (code.startsWith("SQLITE_READONLY")
        || code.startsWith("SQLITE_CANTOPEN")
        || code.startsWith("SQLITE_PERM")
        || code.startsWith("SQLITE_AUTH")) {
      return "cannot be opened for writing: look at the rights on the file and its folder";
    }
    if (isFault) {
      return "cannot be read or written: the disk reports a fault";
    }
    return "refuses: " + String.valueOf(thrown.getMessage()).replaceAll("\\s+", " ");
  }

  /** Where SQLite cannot even make its index of the log it says "fault", not "full". */
  private static boolean isFull(Path file) {
    return file.toAbsolutePath().getParent().toFile().getUsableSpace() < LEAST_ROOM_BYTES;
  }
}
