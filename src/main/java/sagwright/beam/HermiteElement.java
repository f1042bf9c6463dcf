package sagwright.beam;

/**
 * A beam element with cubic deflection: its four unknowns are deflection and slope at its first and
 * its second node.
 */
record HermiteElement(double fromMm, double lengthMm) {
  /** What each unknown adds to the deflection at x. */
  double[] deflectionAt(double xMm) {
    double s = (xMm - fromMm) / lengthMm;
    double s2 = s * s;
    double s3 = s2 * s;
    return new double[] {
      1 - 3 * s2 + 2 * s3, lengthMm * (s - 2 * s2 + s3), 3 * s2 - 2 * s3, lengthMm * (s3 - s2)
    };
  }

  /** What each unknown adds to the curvature at x, in 1/mm for each. */
  double[] curvatureAt(double xMm) {
    double s = (xMm - fromMm) / lengthMm;
    double perLength2 = 1 / (lengthMm * lengthMm);
    return new double[] {
      (12 * s - 6) * perLength2,
      (6 * s - 4) / lengthMm,
      (6 - 12 * s) * perLength2,
      (6 * s - 2) / lengthMm
    };
  }
}
