package sagwright.quantity;

/** What was typed cannot be read as a quantity; the message is one line for people. */
public final class UnreadableQuantityException extends Exception {
  private static final long serialVersionUID = 1L;

  UnreadableQuantityException(String line) {
    super(line);
  }
}
