package sagwright.beam;

/**
 * Bending moment and shear of one newton on a simply supported shaft.
 *
 * @param setUp whose supports carry it
 * @param atMm where it pushes
 */
record UnitLoad(SetUp setUp, double atMm) {
  /** Bending moment at x in N·mm per N. */
  double momentAt(double xMm) {
    return xMm <= atMm
        ? (setUp.supportBMm() - atMm) * (xMm - setUp.supportAMm()) / setUp.spanMm()
        : (atMm - setUp.supportAMm()) * (setUp.supportBMm() - xMm) / setUp.spanMm();
  }

  /** Shear at x in N per N. */
  double shearAt(double xMm) {
    return xMm <= atMm
        ? (setUp.supportBMm() - atMm) / setUp.spanMm()
        : -(atMm - setUp.supportAMm()) / setUp.spanMm();
  }
}
