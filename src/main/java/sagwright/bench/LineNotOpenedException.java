package sagwright.bench;

import java.io.IOException;

/** A line could not be opened; the message is one line for people: why, and what to do. */
public final class LineNotOpenedException extends IOException {
  private static final long serialVersionUID = 1L;

  public LineNotOpenedException(String reason) {
    super(reason);
  }
}
