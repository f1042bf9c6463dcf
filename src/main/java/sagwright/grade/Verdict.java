package sagwright.grade;

/** The four words, the same on the screen, on paper and in the store. They speak of stiffness. */
public enum Verdict {
  /** As surely as the shop wants it the stiffness lies within the ask's tolerance. */
  MEETS("meets"),
  /** As surely as that it lies below. */
  SOFTER("softer"),
  /** As surely as that it lies above. */
  STIFFER("stiffer"),
  /** None of these is sure enough. */
  UNDECIDED("undecided");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
