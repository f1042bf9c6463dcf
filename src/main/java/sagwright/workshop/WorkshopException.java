package sagwright.workshop;

/** What a workshop cannot do or has not got; the message is one line for people. */
public final class WorkshopException extends Exception {
  private static final long serialVersionUID = 1L;

  public WorkshopException(String message) {
    super(message);
  }

  WorkshopException(String message, Throwable cause) {
    super(message, cause);
  }
}
