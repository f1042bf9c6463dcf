package sagwright.check;

/** Points through which no line can be laid; the message is one line for people that says why. */
public final class PoorPointsException extends Exception {
  private static final long serialVersionUID = 1L;

  PoorPointsException(String reason) {
    super(reason);
  }
}
