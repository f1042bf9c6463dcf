package sagwright.survey;

/** Runs that cannot be of one shaft; the message says in one line what differs. */
public final class DifferentShaftsException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int run;

  DifferentShaftsException(int run, String why) {
    super(why);
    this.run = run;
  }

  /** Which run differs from the first, counted from 0. */
  public int run() {
    return run;
  }
}
