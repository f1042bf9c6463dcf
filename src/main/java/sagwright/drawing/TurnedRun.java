package sagwright.drawing;

/**
 * A run at its turn.
 *
 * @param number counted from 1
 * @param result what it gave, as "3.141"; empty while it is being taken
 * @param turnDegrees how far the shaft was turned
 */
public record TurnedRun(int number, String result, double turnDegrees) {
  /** Whether it is being taken just now. */
  public boolean isNow() {
    return result.isEmpty();
  }

  /** "run 2: 3.141" or "run 3 now". */
  public String inWords() {
    return "run " + number + (isNow() ? " now" : ": " + result);
  }
}
