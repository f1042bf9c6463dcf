package sagwright.beam;

/** The outline of every cross-section of a shaft. Formulas: contract, section 2. */
public enum SectionShape {
  /** Turned or planed round; depth and width are the two axes. Left out in a sheet: this. */
  ELLIPSE(Math.PI / 4, Math.PI / 64, 10.0 / 9.0),
  /** Sawn square or board. */
  RECTANGLE(1.0, 1.0 / 12.0, 6.0 / 5.0);

  private final double areaFactor;
  private final double secondMomentFactor;
  private final double shearFactor;

  SectionShape(double areaFactor, double secondMomentFactor, double shearFactor) {
    this.areaFactor = areaFactor;
    this.secondMomentFactor = secondMomentFactor;
    this.shearFactor = shearFactor;
  }

  /** Area in mm² over depth times width. */
  public double areaFactor() {
    return areaFactor;
  }

  /** Second moment of area in mm⁴ over width times depth cubed. */
  public double secondMomentFactor() {
    return secondMomentFactor;
  }

  /** The energy form factor κ of shear (Wood Handbook 9-2: 10/9 and 6/5). */
  public double shearFactor() {
    return shearFactor;
  }
}
