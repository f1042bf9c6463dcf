package sagwright.bench;

import java.time.Duration;

/**
 * A line of bytes to and from a bench head: the one seam to hardware. An open line is used by one
 * reading and one writing thread; {@link #close} may come from any thread and ends the waits of
 * both.
 */
public interface ByteLine extends AutoCloseable {
  /** What the line is, in words that a maker knows it by. */
  String description();

  /**
   * Waits for bytes until the deadline at the most (a line may step in tenths of a second) and
   * takes what is there.
   *
   * @return how many bytes were put at the start of {@code into}; 0 where none came in time
   * @throws LineLostException where the line is gone or was closed; every later read throws too
   */
  int read(byte[] into, Duration deadline) throws LineLostException;

  /**
   * Sends all the bytes. May wait as long as the other end takes none, until the line is closed: so
   * it is called on a thread that can be given up.
   *
   * @throws LineLostException where the line is gone or was closed
   */
  void write(byte[] bytes) throws LineLostException;

  /** Ends within two seconds, whatever the device does. A second call does nothing. */
  @Override
  void close();
}
