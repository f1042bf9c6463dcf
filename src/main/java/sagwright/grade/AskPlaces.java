package sagwright.grade;

import java.util.List;
import sagwright.beam.SetUp;

/**
 * The three set-ups that a shop asks at: the front feels the bridge hand, the middle is the usual
 * one, the butt feels the splice. On a finished shaft, in mm from its tip end.
 */
public record AskPlaces(SetUp front, SetUp middle, SetUp butt) {
  /** What a shop starts with. Common practice, no source. */
  public static final AskPlaces AT_FIRST =
      new AskPlaces(
          new SetUp(50, 650, 350, 350, 0),
          new SetUp(100, 1100, 600, 600, 0),
          new SetUp(700, 1450, 1075, 1075, 0));

  /** How near the butt end a support stands that has to give way. */
  private static final double LEAST_BEFORE_BUTT_MM = 20;

  /** The same with another set-up in the middle: the one that the shop's words are for. */
  public AskPlaces withMiddle(SetUp usual) {
    return new AskPlaces(front, usual, butt);
  }

  /** Front, middle, butt. */
  public List<SetUp> all() {
    return List.of(front, middle, butt);
  }

  /**
   * A set-up on a shaft of a given length: one that would run past the butt is moved towards the
   * tip as a whole; where the shaft is shorter than it, it stays as it is.
   */
  public static SetUp on(double lengthMm, SetUp setUp) {
    double past = setUp.supportBMm() - (lengthMm - LEAST_BEFORE_BUTT_MM);
    double back = Math.ceil(past);
    if (setUp.supportBMm() <= lengthMm || back > setUp.supportAMm()) {
      return setUp;
    }
    return new SetUp(
        setUp.supportAMm() - back,
        setUp.supportBMm() - back,
        setUp.loadMm() - back,
        setUp.gaugeMm() - back,
        setUp.turnDegrees());
  }
}
