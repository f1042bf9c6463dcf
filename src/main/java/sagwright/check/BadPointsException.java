package sagwright.check;

/** A points file that cannot be read; the message is one line that names the line and the fault. */
public final class BadPointsException extends Exception {
  private static final long serialVersionUID = 1L;

  BadPointsException(long line, String problem) {
    super("line " + line + ": " + problem);
  }
}
