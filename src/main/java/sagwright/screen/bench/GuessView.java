package sagwright.screen.bench;

import java.util.List;
import sagwright.drawing.StiffnessMark;
import sagwright.job.HandLearning;
import sagwright.uncertainty.Estimate;

/**
 * The guess by hand before the bench is asked. Immutable.
 *
 * @param isAwaited whether no test may begin before there is one
 * @param hand whose initials, empty for nobody's
 * @param words of the shop's scale that may be typed; none where it does not hold
 * @param guessedNPerMm null where this blank was not guessed yet
 * @param answerNPerMm what the bench showed after it; null before that
 * @param learning how the hand has learnt so far
 */
record GuessView(
    boolean isAwaited,
    String hand,
    List<String> words,
    Double guessedNPerMm,
    Estimate answerNPerMm,
    HandLearning learning) {
  GuessView {
    words = List.copyOf(words);
  }

  boolean isAnswered() {
    return guessedNPerMm != null && answerNPerMm != null;
  }

  /** The answer on a stiffness line; only where there is one. */
  StiffnessMark benchMark() {
    return new StiffnessMark(answerNPerMm.value(), answerNPerMm.halfWidth95(), false);
  }
}
