package sagwright.screen.bench;

/** What the bench's page shows below its head: the bench as it is, or one thing about it whole. */
enum BenchSide {
  LIVE,
  /** A run of hung masses and a dial, typed in. */
  HAND,
  /** What stands behind the ±. */
  BEHIND,
  /** What all runs show together. */
  SURVEY,
  /** How far the shaft is off straight, taken down. */
  BOW,
  /** How the hand learns. */
  LEARNING,
  /** What the finished cue will be. */
  FINISHED;

  /** Whether something is typed in there, and kept. */
  boolean isForm() {
    return this == HAND || this == BOW;
  }

  /** Whether there is anything to be seen or typed there. */
  boolean isThereIn(BenchView view) {
    return switch (this) {
      case LIVE -> true;
      case HAND -> view.shaft() != null && !view.awaitsGuess();
      case BOW -> view.shaft() != null;
      case BEHIND, SURVEY -> view.answer() != null;
      case LEARNING -> view.guess() != null;
      case FINISHED -> view.forecast() != null;
    };
  }
}
