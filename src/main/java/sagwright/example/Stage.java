package sagwright.example;

/** How far a blank has come, and how long that takes in this shop. */
enum Stage {
  SQUARE("square", 0, "bought"),
  ROUGHED("roughed", 110, "roughed round, hung to dry"),
  SECOND_TURNING("second turning", 300, "second turning, no chatter"),
  NEAR_SIZE("near size", 520, "down to near size"),
  /** Whenever an order asks for it, as the next. */
  PLANED("planed", 640, "planed to its order's taper"),
  FINISHED_CUE("finished cue", 690, "spliced, ferrule on, oiled");

  private final String words;
  private final int daysAfterBought;

  private final String done;

  Stage(String words, int daysAfterBought, String done) {
    this.words = words;
    this.daysAfterBought = daysAfterBought;
    this.done = done;
  }

  /** As the shop writes it. */
  String words() {
    return words;
  }

  /** What was done to come to it. */
  String done() {
    return done;
  }

  int daysAfterBought() {
    return daysAfterBought;
  }

  boolean isReachedBy(Stage other) {
    return other.compareTo(this) >= 0;
  }
}
