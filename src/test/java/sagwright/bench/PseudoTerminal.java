package sagwright.bench;

import com.sun.jna.LastErrorException;
import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Supplier;

/**
 * A pseudo-terminal: at its path a serial port as the system knows them, on its own side the byte
 * line of a head. Closing it is pulling the plug.
 */
public final class PseudoTerminal implements ByteLine {
  private static final int O_RDWR_NOCTTY = 0x102;
  private static final int O_NONBLOCK = 0x800;
  private static final int EAGAIN = 11;
  private static final short POLLOUT = 4;
  private static final int STEP_MILLIS = 10;
  private static final short POLLIN = 1;

  private final int master;
  private final int heldSlave;
  private final Path path;

  /**
   * Whoever uses the descriptor holds the read lock: once closed, the system gives it out again.
   */
  private final ReadWriteLock lock = new ReentrantReadWriteLock();

  private volatile boolean isClosed;
  private boolean isGivenBack;

  private PseudoTerminal(boolean holdsSlave) {
    master = C.X.posix_openpt(O_RDWR_NOCTTY | O_NONBLOCK);
    C.X.grantpt(master);
    C.X.unlockpt(master);
    byte[] name = new byte[64];
    C.X.ptsname_r(master, name, new NativeLong(name.length));
    path = Path.of(Native.toString(name));
    byte[] termios = new byte[128];
    C.X.tcgetattr(master, termios);
    C.X.cfmakeraw(termios);
    C.X.tcsetattr(master, 0, termios);
    heldSlave = holdsSlave ? C.X.open(path.toString(), O_RDWR_NOCTTY) : -1;
  }

  public static PseudoTerminal open() {
    return new PseudoTerminal(false);
  }

  /** One whose far end is held open, so that a head may read before a program is there. */
  public static PseudoTerminal heldOpen() {
    return new PseudoTerminal(true);
  }

  public String path() {
    return path.toString();
  }

  /** Makes a link point here, at one stroke, as a port that is found again under its old name. */
  public void putAt(Path link) throws IOException {
    Path next = link.resolveSibling(link.getFileName() + ".next");
    Files.createSymbolicLink(next, path);
    Files.move(next, link, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public String description() {
    return "the head's side of " + path;
  }

  @Override
  public int read(byte[] into, Duration deadline) throws LineLostException {
    long end = System.nanoTime() + deadline.toNanos();
    do {
      long left = Math.max(0, (end - System.nanoTime()) / 1_000_000);
      int count = tryOnce(POLLIN, left, () -> C.X.read(master, into, new NativeLong(into.length)));
      if (count > 0) {
        return count;
      }
    } while (System.nanoTime() < end);
    return 0;
  }

  @Override
  public void write(byte[] bytes) throws LineLostException {
    int sent = 0;
    while (sent < bytes.length) {
      byte[] rest = Arrays.copyOfRange(bytes, sent, bytes.length);
      sent +=
          tryOnce(POLLOUT, STEP_MILLIS, () -> C.X.write(master, rest, new NativeLong(rest.length)));
    }
  }

  /**
   * Takes what was written and no program has read; only where the far end is held open.
   *
   * @return how many lines ended in it
   */
  public int takeUnreadLines() {
    int lines = 0;
    byte[] some = new byte[4096];
    while (C.X.poll(pollOf(heldSlave, POLLIN), new NativeLong(1), 0) > 0) {
      int count = C.X.read(heldSlave, some, new NativeLong(some.length)).intValue();
      for (int i = 0; i < count; i++) {
        lines += some[i] == '\n' ? 1 : 0;
      }
    }
    return lines;
  }

  /** Struct pollfd, little endian: int fd, short events, short revents. */
  private static byte[] pollOf(int descriptor, short event) {
    byte[] poll = new byte[8];
    for (int i = 0; i < 4; i++) {
      poll[i] = (byte) (descriptor >> 8 * i);
    }
    poll[4] = (byte) event;
    return poll;
  }

  /** Waits a little until the descriptor is ready, then does it; 0 where it was not to be done. */
  private int tryOnce(short event, long millis, Supplier<NativeLong> what)
      throws LineLostException {
    lock.readLock().lock();
    try {
      if (isClosed) {
        throw new LineLostException("the plug is pulled");
      }
      if (C.X.poll(pollOf(master, event), new NativeLong(1), (int) Math.min(millis, STEP_MILLIS))
          > 0) {
        return what.get().intValue();
      }
    } catch (LastErrorException e) {
      if (e.getErrorCode() != EAGAIN) {
        waitForAProgram(millis);
      }
    } finally {
      lock.readLock().unlock();
    }
    return 0;
  }

  /** Nobody holds the port open: the system answers at once, so the waiting is done here. */
  private static void waitForAProgram(long millis) {
    try {
      Thread.sleep(Math.min(5, millis));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    isClosed = true;
    lock.writeLock().lock();
    try {
      if (!isGivenBack) {
        isGivenBack = true;
        if (heldSlave >= 0) {
          C.X.close(heldSlave);
        }
        C.X.close(master);
      }
    } finally {
      lock.writeLock().unlock();
    }
  }

  interface C extends Library {
    C X = Native.load("c", C.class);

    int posix_openpt(int flags) throws LastErrorException;

    int grantpt(int fd) throws LastErrorException;

    int unlockpt(int fd) throws LastErrorException;

    int ptsname_r(int fd, byte[] name, NativeLong length) throws LastErrorException;

    int tcgetattr(int fd, byte[] termios) throws LastErrorException;

    void cfmakeraw(byte[] termios);

    int tcsetattr(int fd, int when, byte[] termios) throws LastErrorException;

    int open(String path, int flags) throws LastErrorException;

    int close(int fd) throws LastErrorException;

    int poll(byte[] fds, NativeLong count, int millis) throws LastErrorException;

    NativeLong read(int fd, byte[] to, NativeLong count) throws LastErrorException;

    NativeLong write(int fd, byte[] from, NativeLong count) throws LastErrorException;
  }
}
