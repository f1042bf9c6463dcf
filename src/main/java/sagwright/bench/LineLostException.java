package sagwright.bench;

import java.io.IOException;

/** The line to the head is gone; the message is one line for people. */
public class LineLostException extends IOException {
  private static final long serialVersionUID = 1L;

  public LineLostException(String reason) {
    super(reason);
  }
}
