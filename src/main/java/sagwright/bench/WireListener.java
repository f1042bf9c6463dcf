package sagwright.bench;

/**
 * Is told what came over the wire, in the order in which it came: for each line first {@link #raw},
 * then what it was. What a listener does not ask for passes it by.
 */
public interface WireListener {
  /**
   * Bytes as they came, the line's end included: set one behind the other they are the stream
   * itself. One call a line; a line of more than {@link WireReader#MOST_KEPT_TOGETHER} bytes comes
   * in pieces.
   */
  default void raw(byte[] bytes) {}

  /**
   * A good reading.
   *
   * @param micros the head's time, wraps undone: it never falls, across restarts too
   */
  default void reading(Reading reading, long micros) {}

  /** Before the reading that shows it: so many readings (one or more) did not come. */
  default void gap(int missing) {}

  /** Before the first reading after it: the head has started anew. */
  default void restarted() {}

  /**
   * A line that is counted and shown, and not used.
   *
   * @param line what can be shown of it: other characters than ASCII's own as dots
   */
  default void refused(Refusal why, String line) {}

  /** The head's answer to a command. */
  default void answered(HeadAnswer answer) {}
}
