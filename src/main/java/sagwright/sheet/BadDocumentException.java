package sagwright.sheet;

/** A document that cannot be taken; the message is one line that names the key and the fault. */
public final class BadDocumentException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String key;
  private final String problem;

  /**
   * @param key the key's path as {@code shaft.stations[1].depthMm}; empty for the whole document
   * @param problem what is wrong with it, as words that may follow the key
   */
  public BadDocumentException(String key, String problem) {
    super(key.isEmpty() ? problem : key + ": " + problem);
    this.key = key;
    this.problem = problem;
  }

  public String key() {
    return key;
  }

  public String problem() {
    return problem;
  }
}
