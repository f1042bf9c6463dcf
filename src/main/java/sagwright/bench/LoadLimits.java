package sagwright.bench;

/**
 * How far to load a shaft, both reckoned from the rest.
 *
 * @param targetN where the test says "enough"; above 0
 * @param safeN what the shaft may safely take; not below the target
 */
public record LoadLimits(double targetN, double safeN) {
  public LoadLimits {
    if (!(targetN > 0) || !(safeN >= targetN) || !Double.isFinite(targetN)) {
      throw new IllegalArgumentException(
          "the target is above 0 N and not above the safe load: " + targetN + ", " + safeN);
    }
  }
}
