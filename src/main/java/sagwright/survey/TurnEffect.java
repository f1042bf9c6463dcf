package sagwright.survey;

import org.apache.commons.math3.linear.RealMatrix;

/**
 * How something changes as the shaft is turned: {@code y₀·(1 + a·cos 2φ + b·sin 2φ)}, twofold since
 * half a turn lays the same plane up again.
 *
 * @param amplitudePercent √(a² + b²): the stiffer way lies so much above the mean, the softer below
 * @param amplitudeStdUncertaintyPercent along the stiffer way
 * @param stifferDegrees 0 to 180: the turn at which y is greatest
 * @param stifferStdUncertaintyDegrees of that turn; no more than an even guess gives, 52°
 * @param isSignificant whether an effect so great comes by luck less than once in a hundred times
 */
public record TurnEffect(
    double amplitudePercent,
    double amplitudeStdUncertaintyPercent,
    double stifferDegrees,
    double stifferStdUncertaintyDegrees,
    boolean isSignificant) {
  /**
   * @param a share in phase with cos 2φ, relative
   * @param b share in phase with sin 2φ, relative
   * @param covariance of the two, positive definite
   */
  static TurnEffect of(double a, double b, RealMatrix covariance) {
    Swing swing = Swing.of(a, b, covariance);
    return new TurnEffect(
        100 * swing.size(),
        100 * swing.sizeStdUncertainty(),
        swing.atDegrees() / 2,
        swing.atStdUncertaintyDegrees() / 2,
        swing.isSeen());
  }
}
