package sagwright.drawing;

/**
 * A run at its turn.
 *
 * @param words what is written at the side that was up, as "run 2: 3.141"
 * @param turnDegrees how far the shaft was turned
 * @param now the run that is being taken: bold
 */
public record TurnedRun(String words, double turnDegrees, boolean now) {}
