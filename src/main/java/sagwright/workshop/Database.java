package sagwright.workshop;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteOpenMode;

/**
 * One connection to one SQLite file: write-ahead log, every commit forced to disk, foreign keys
 * held. Any thread may use it; they take turns.
 *
 * <p>Jdbi is opened when it is first wanted: a command that reads plainly starts without it, a
 * quarter of a second sooner.
 */
final class Database implements AutoCloseable {
  /** How long a write waits for another program's. */
  private static final int BUSY_TIMEOUT_MS = 3000;

  /** Something done with the file. */
  interface Work<T> {
    T in(Handle handle) throws WorkshopException;
  }

  /** The same without Jdbi, for what is read at the start or by the thousand. */
  interface PlainWork<T> {
    T on(Connection connection) throws SQLException, WorkshopException;
  }

  private final Path file;
  private final Connection connection;
  private final ReentrantLock turn = new ReentrantLock();
  private Handle handle;
  private boolean isWriting;

  private Database(Path file, Connection connection) {
    this.file = file;
    this.connection = connection;
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
      return new Database(file, config.createConnection("jdbc:sqlite:" + file));
    } catch (SQLException e) {
      throw Faults.inWords(e, file);
    }
  }

  Path file() {
    return file;
  }

  <T> T read(Work<T> work) throws WorkshopException {
    turn.lock();
    try {
      return work.in(handle());
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }

  <T> T readPlainly(PlainWork<T> work) throws WorkshopException {
    turn.lock();
    try {
      return work.on(connection);
    } catch (SQLException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }

  private Handle handle() {
    if (handle == null) {
      handle = Jdbi.open(connection);
    }
    return handle;
  }

  /** All of it or nothing; within another write it is part of that one. */
  <T> T write(Work<T> work) throws WorkshopException {
    turn.lock();
    try {
      return isWriting ? work.in(handle()) : inTransaction(work);
    } catch (RuntimeException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }

  private <T> T inTransaction(Work<T> work) throws WorkshopException {
    // by hand: the driver's own way leaves the connection astray where the file is busy; and
    // immediate: what reads before it writes would fail at once, whatever the timeout
    handle().execute("begin immediate");
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
      connection.close();
    } catch (SQLException e) {
      throw Faults.inWords(e, file);
    } finally {
      turn.unlock();
    }
  }
}
