package sagwright.run;

/** A run that is too poor to give an answer; the message is one line for people that says why. */
public final class PoorRunException extends Exception {
  private static final long serialVersionUID = 1L;

  public PoorRunException(String reason) {
    super(reason);
  }
}
