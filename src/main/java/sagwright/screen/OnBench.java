package sagwright.screen;

/** The bench as another page needs it. */
@FunctionalInterface
public interface OnBench {
  /** Lays a blank by its tag and opens the bench; called on the event thread. */
  void lay(String tag);

  /**
   * The tag of the blank there that the hand is to guess before its figures are seen; empty for
   * none. May be asked on any thread.
   */
  default String toBeGuessed() {
    return "";
  }
}
