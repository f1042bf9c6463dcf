package sagwright.bench;

/** Why a line was counted and shown, and not used. */
public enum Refusal implements LineOutcome {
  CHECK_SUM("its check sum does not fit: it was garbled on the way"),
  TOO_LONG("it is longer than a line of a bench head can be"),
  NOT_A_READING("it is not a bench head's reading"),
  LOAD_OUT_OF_RANGE("its load lies outside what a converter can count"),
  REPEATED("it repeats the reading before it");

  private final String inWords;

  Refusal(String inWords) {
    this.inWords = inWords;
  }

  /** What is wrong with the line, to follow "refused: ". */
  public String inWords() {
    return inWords;
  }
}
