package sagwright.bench;

/** A line that is still there, but carries nothing more: its head is off or hangs. */
final class HeadSilentException extends LineLostException {
  private static final long serialVersionUID = 1L;

  HeadSilentException(String message) {
    super(message);
  }
}
