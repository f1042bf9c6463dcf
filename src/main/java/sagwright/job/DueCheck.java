package sagwright.job;

/**
 * One of the things that prove the bench, and how it stands.
 *
 * @param standing in words
 * @param next what to do or to look at
 */
public record DueCheck(Subject subject, Urgency urgency, String standing, String next) {
  /** What is checked. */
  public enum Subject {
    ROD("check rod"),
    LOAD("load"),
    GAUGE("gauge"),
    SPRING("gauge's spring"),
    FRAME("frame");

    private final String inWords;

    Subject(String inWords) {
      this.inWords = inWords;
    }

    public String inWords() {
      return inWords;
    }
  }

  /** From the most urgent to what needs nothing. */
  public enum Urgency {
    OUT("out"),
    DUE("due"),
    SOON("due soon"),
    ADVISED("advised"),
    GOOD("in order");

    private final String inWords;

    Urgency(String inWords) {
      this.inWords = inWords;
    }

    public String inWords() {
      return inWords;
    }
  }
}
