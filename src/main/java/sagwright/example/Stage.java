package sagwright.example;

/** How far a blank has come, and how long that takes in this shop. */
enum Stage {
  SQUARE("square", 0),
  ROUGHED("roughed", 110),
  SECOND_TURNING("second turning", 300),
  NEAR_SIZE("near size", 520),
  /** Whenever an order asks for it, as the next. */
  PLANED("planed", 640),
  FINISHED_CUE("finished cue", 690);

  private final String words;
  private final int daysAfterBought;

  Stage(String words, int daysAfterBought) {
    this.words = words;
    this.daysAfterBought = daysAfterBought;
  }

  /** As the shop writes it. */
  String words() {
    return words;
  }

  int daysAfterBought() {
    return daysAfterBought;
  }

  boolean isReachedBy(Stage other) {
    return other.compareTo(this) >= 0;
  }
}
