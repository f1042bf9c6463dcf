package sagwright.beam;

/**
 * A square core |y|, |z| ≤ h inside a round of radius R, in closed form (segments of a circle cut
 * off at h; docs/contract.md, section 5). The plane of bending is square to one pair of faces.
 *
 * @param halfMm half the core's side, h, 0 or above
 * @param radiusMm of the round, R, above 0
 */
public record SpliceSection(double halfMm, double radiusMm) {
  /** Half the angle, seen from the centre, of the segment that one face cuts off; 0 where none. */
  private double segmentAngle() {
    return halfMm >= radiusMm ? 0 : Math.atan2(halfChordMm(), halfMm);
  }

  /** Half the length of the chord in which the plane of a face meets the round. */
  private double halfChordMm() {
    return Math.sqrt((radiusMm - halfMm) * (radiusMm + halfMm));
  }

  /** Whether the core's corners lie inside the round. */
  private boolean isWholeSquare() {
    return halfMm * Math.sqrt(2) <= radiusMm;
  }

  /** The whole round's area in mm². */
  public double roundAreaMm2() {
    return Math.PI * radiusMm * radiusMm;
  }

  /** The whole round's second moment of area in mm⁴. */
  public double roundSecondMomentMm4() {
    return Math.PI / 4 * fourth(radiusMm);
  }

  /** The core's area in mm². */
  public double coreAreaMm2() {
    return isWholeSquare() ? 4 * halfMm * halfMm : roundAreaMm2() - segmentsAreaMm2();
  }

  /** The core's second moment of area in mm⁴. */
  public double coreSecondMomentMm4() {
    return isWholeSquare()
        ? 4.0 / 3.0 * fourth(halfMm)
        : roundSecondMomentMm4() - segmentsSecondMomentMm4();
  }

  /** The area in mm² of what is not core. */
  public double spliceAreaMm2() {
    return isWholeSquare() ? roundAreaMm2() - coreAreaMm2() : segmentsAreaMm2();
  }

  /** The second moment of area in mm⁴ of what is not core. */
  public double spliceSecondMomentMm4() {
    return isWholeSquare()
        ? roundSecondMomentMm4() - coreSecondMomentMm4()
        : segmentsSecondMomentMm4();
  }

  /** ∂I_core/∂R in mm³: what the arcs of the core's outline gain. */
  public double coreSecondMomentByRadiusMm3() {
    return isWholeSquare() ? 0 : radiusMm * radiusMm * radiusMm * (Math.PI - 4 * segmentAngle());
  }

  /** ∂I_core/∂h in mm³: what the faces of the core gain. */
  public double coreSecondMomentByHalfMm3() {
    if (halfMm >= radiusMm) {
      return 0;
    }
    double half = Math.min(halfMm, halfChordMm());
    return 4 * half * (halfMm * halfMm + half * half / 3);
  }

  /** ∂I/∂R of the whole round in mm³. */
  public double roundSecondMomentByRadiusMm3() {
    return Math.PI * radiusMm * radiusMm * radiusMm;
  }

  private double segmentsAreaMm2() {
    double angle = segmentAngle();
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    return 4 * radiusMm * radiusMm * (angle - sin * cos);
  }

  private double segmentsSecondMomentMm4() {
    double angle = segmentAngle();
    double sin = Math.sin(angle);
    double cos = Math.cos(angle);
    double sin3cos = sin * sin * sin * cos;
    double across = (angle - sin * cos + 2 * sin3cos) / 2;
    double along = (3 * angle - 3 * sin * cos - 2 * sin3cos) / 6;
    return fourth(radiusMm) * (across + along);
  }

  private static double fourth(double x) {
    return x * x * x * x;
  }
}
