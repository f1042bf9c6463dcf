package sagwright.screen;

/**
 * How a form hears what became of what it sent. May be called from any thread, once.
 */
public interface Reply {
  /** It is kept. */
  void done();

  /**
   * It is not, and nothing was changed.
   *
   * @param why one line for people
   */
  void refused(String why);
}
