package sagwright.survey;

import sagwright.beam.ListeningBand;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;

/**
 * Where along the shaft a set-up's answer comes from, in a few figures.
 *
 * @param fromMm a twentieth of the answer comes from short of this
 * @param middleMm half of it from short of this
 * @param toMm a twentieth from beyond this
 */
public record SetUpListening(double fromMm, double middleMm, double toMm) {
  /** Of ten strokes the first lies where half a tenth of the answer is short of it. */
  private static final int STROKES = 10;

  /**
   * @param modulusToShearRatio r = E/G
   */
  public static SetUpListening of(Taper taper, SetUp setUp, double modulusToShearRatio) {
    ListeningBand band = ListeningBand.of(taper, setUp, modulusToShearRatio);
    double[] strokes = band.strokesMm(STROKES);
    return new SetUpListening(strokes[0], band.strokesMm(1)[0], strokes[STROKES - 1]);
  }
}
