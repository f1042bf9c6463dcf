package sagwright.bench;

import java.io.IOException;

/**
 * Keeps the lines of one run while they come. Called on the head-reader thread, so it must not wait
 * for a disk: a journal of its own thread takes the bytes on.
 */
public interface LineJournal {
  /**
   * @param raw bytes as they came, line ends included; in the order in which they came. The array
   *     is the journal's own.
   * @throws IOException where what was given earlier could not be kept: the run then ends
   */
  void append(byte[] raw) throws IOException;
}
