package sagwright.screen;

/** What was typed cannot be taken; the message is one line for people that names the field. */
public final class ComplaintException extends Exception {
  private static final long serialVersionUID = 1L;

  public ComplaintException(String line) {
    super(line);
  }

  /** The field that it is about: what the line has before its first colon; empty for none. */
  public String field() {
    int colon = getMessage().indexOf(": ");
    return colon < 0 ? "" : getMessage().substring(0, colon);
  }
}
