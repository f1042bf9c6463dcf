package sagwright.workshop;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * One handle on one SQLite file: write-ahead log, every commit forced to disk, foreign keys held.
 * Any thread may use it; they take turns.
 */
final class Database implements AutoCloseable {
  /** How long a write waits for another program's. */
  private static final int BUSY_TIMEOUT_MS = 3000;

  /** Something done with the file. */
  interface Work<T> {
    T in(Handle handle) throws WorkshopException;
  }

  private final Path file;
  private final Handle handle;
  private final ReentrantLock turn = new ReentrantLock();
  private boolean isWriting;

  private Database(Path file, Handle handle) {
    this.file = file;
    this.handle = handle;
  }

  static Database open(Path file, boolean mayCreate) throws WorkshopException {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_TIMEOUT_MS);
    if (!mayCreate) {
      config.resetOpenMode(SQLiteOpenMode.CREATE);
    }
    try {
      Jdbi jdbi = Jdbi.create(() -> config.createConnection("jdbc:sqlite:" + file));
      return new Database(file, jdbi.open());
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    }
  }

  Path file() {
    return file;
  }

  <T> T read(Work<T> work) throws WorkshopException {
    turn.lock();
    try {
      return work.in(handle);
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }

  /** All of it or nothing; within another write it is part of that one. */
  <T> T write(Work<T> work) throws WorkshopException {
    turn.lock();
    try {
      return isWriting ? work.in(handle) : inTransaction(work);
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }

  private <T> T inTransaction(Work<T> work) throws WorkshopException {
    // by hand: the driver's own way leaves the connection astray where the file is busy; and
    // immediate: what reads before it writes would fail at once, whatever the timeout
    handle.execute("begin immediate");
    isWriting = true;
    try {
      T result = work.in(handle);
      handle.execute("commit");
      return result;
    } catch (WorkshopException | RuntimeException e) {
      rollBack(e);
      throw e;
    } finally {
      isWriting = false;
    }
  }

  private void rollBack(Exception cause) {
    try {
      handle.execute("rollback");
    } catch (RuntimeException e) {
      cause.addSuppressed(e); // SQLite itself has rolled back, as it does where a disk is full
    }
  }

  /** Runs a script of several statements, triggers among them, which Jdbi would cut apart. */
  static void script(Handle handle, String sql) throws SQLException {
    try (var statement = handle.getConnection().createStatement()) {
      statement.executeUpdate(sql);
    }
  }

  @Override
  public void close() throws WorkshopException {
    turn.lock();
    try {
      handle.close();
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }
}
