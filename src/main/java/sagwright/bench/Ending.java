package sagwright.bench;

/** How a test came to its end. */
public enum Ending {
  /** By itself: the load was back off. */
  LOAD_OFF("the load is back off"),
  /** The one at the bench ended it, in the ordinary way. */
  ENDED_BY_HAND("ended by hand"),
  /** The one at the bench broke it off: kept, and set aside. */
  BROKEN_OFF("broken off: kept, and set aside"),
  TIMED_OUT("the time was up before the load was back off"),
  LINE_LOST("the line to the bench head was lost"),
  HEAD_SILENT("the bench head fell silent"),
  HEAD_RESTARTED("the bench head started anew"),
  /** The program itself was cut off; the run was found again later. */
  CUT_OFF("the run was cut off"),
  /** What was read could no longer be kept on disk. */
  NOT_KEPT("the readings could no longer be kept");

  private final String inWords;

  Ending(String inWords) {
    this.inWords = inWords;
  }

  public String inWords() {
    return inWords;
  }

  /**
   * Whether a run that ended so is to be worked out.
   *
   * @param cameOffPeak whether the load had come back off its peak
   */
  public boolean allowsAnswer(boolean cameOffPeak) {
    return switch (this) {
      case LOAD_OFF, ENDED_BY_HAND, CUT_OFF -> true;
      case LINE_LOST, HEAD_SILENT, HEAD_RESTARTED -> cameOffPeak;
      case BROKEN_OFF, TIMED_OUT, NOT_KEPT -> false;
    };
  }
}
