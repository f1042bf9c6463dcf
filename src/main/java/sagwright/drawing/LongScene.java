package sagwright.drawing;

import java.util.Objects;
import sagwright.beam.ElasticCurve;
import sagwright.beam.ListeningBand;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;

/**
 * What the bench's long drawing shows: a shaft on its supports, how far it is bent just now, and
 * the words and figures that live on it. The costly parts (curve, listening band) are worked out
 * once for a shaft on a set-up; {@link #showing} makes the next picture from them.
 */
public final class LongScene {
  private static final int STROKES = 100;

  private final Taper taper;
  private final SetUp setUp;
  private final ElasticCurve curve;
  private final ListeningBand band;
  private final double[] strokesMm;
  private final double greatestBendMm;
  private final Moment moment;

  /**
   * What changes while a test runs.
   *
   * @param instruction a few syllables, large; empty for none
   * @param detail the line under it
   * @param loadN reading, NaN where there is none
   * @param deflectionMm reading at the gauge, NaN where there is none
   * @param bendMm the shaft's own deflection at the gauge: the frame's is taken off
   */
  public record Moment(
      String instruction, String detail, double loadN, double deflectionMm, double bendMm) {
    /** Nothing said, nothing read. */
    public static final Moment STILL = new Moment("", "", Double.NaN, Double.NaN, 0);
  }

  private LongScene(
      Taper taper,
      SetUp setUp,
      ElasticCurve curve,
      ListeningBand band,
      double[] strokesMm,
      double greatestBendMm,
      Moment moment) {
    this.taper = taper;
    this.setUp = setUp;
    this.curve = curve;
    this.band = band;
    this.strokesMm = strokesMm;
    this.greatestBendMm = greatestBendMm;
    this.moment = moment;
  }

  /**
   * A shaft laid on its supports.
   *
   * @param modulusToShearRatio r = E/G of its wood
   * @param greatestBendMm the deflection at the gauge that the picture must have room for
   */
  public static LongScene of(
      Taper taper, SetUp setUp, double modulusToShearRatio, double greatestBendMm) {
    ListeningBand band = ListeningBand.of(taper, setUp, modulusToShearRatio);
    return new LongScene(
        taper,
        setUp,
        ElasticCurve.of(taper, setUp, modulusToShearRatio),
        band,
        band.strokesMm(STROKES),
        greatestBendMm,
        Moment.STILL);
  }

  /** The same shaft a moment later. */
  public LongScene showing(Moment now) {
    return new LongScene(
        taper, setUp, curve, band, strokesMm, greatestBendMm, Objects.requireNonNull(now));
  }

  Taper taper() {
    return taper;
  }

  SetUp setUp() {
    return setUp;
  }

  double[] strokesMm() {
    return strokesMm;
  }

  double greatestBendMm() {
    return greatestBendMm;
  }

  Moment moment() {
    return moment;
  }

  /** Deflection at x in mm when the gauge's place is bent by so much. */
  double bendMm(double xMm, double atGaugeMm) {
    return atGaugeMm * curve.shapeAt(xMm);
  }

  /** Two numbers for "so many of the strokes lie between here and there", in whole hundreds. */
  Dense dense() {
    int lastHundred = (int) Math.ceil(taper.lengthMm() / 100);
    Dense best = new Dense(0, lastHundred * 100, STROKES);
    for (int hundreds = 1; hundreds < lastHundred; hundreds++) {
      for (int from = 0; from + hundreds <= lastHundred; from++) {
        int to = (from + hundreds) * 100;
        int strokes = (int) Math.round(STROKES * band.shareBetween(from * 100.0, to));
        boolean denser = best.toMm() - best.fromMm() > hundreds * 100 || strokes > best.strokes();
        if (strokes > STROKES / 2 && denser) {
          best = new Dense(from * 100, to, strokes);
        }
      }
      if (best.strokes() < STROKES) {
        break;
      }
    }
    return best;
  }

  /** The shortest stretch of whole hundreds that holds more than half of the strokes. */
  record Dense(int fromMm, int toMm, int strokes) {}
}
