package sagwright.beam;

/**
 * How far a shaft bends at the gauge per newton at the load, times its modulus: the bracket J of
 * docs/contract.md, section 2, in 1/mm, split into bending ∫M·m/I dx and shear κ·∫V·v/A dx.
 *
 * <p>{@code deflection/load = (bending + r·shear)/E + C} with r = E/G. Exact to rounding: see
 * {@link GaussLegendre}.
 */
public record Flexibility(double bendingPerMm, double shearPerMm) {
  /** J in 1/mm for a ratio r = E/G. */
  public double perMm(double modulusToShearRatio) {
    return bendingPerMm + modulusToShearRatio * shearPerMm;
  }

  /** J(c, g): load and gauge where the set-up has them. */
  public static Flexibility of(Taper taper, SetUp setUp) {
    FlexibilityWalk walk = new FlexibilityWalk(taper, setUp, setUp.loadMm(), setUp.gaugeMm());
    walk.run();
    return walk.sum();
  }

  /** J(g, g): what the gauge's own spring sees when it pushes back at the gauge. */
  public static Flexibility atGauge(Taper taper, SetUp setUp) {
    FlexibilityWalk walk = new FlexibilityWalk(taper, setUp, setUp.gaugeMm(), setUp.gaugeMm());
    walk.run();
    return walk.sum();
  }

  /** J(c, x): load where the set-up has it, deflection at any place between the supports. */
  public static Flexibility at(Taper taper, SetUp setUp, double xMm) {
    FlexibilityWalk walk = new FlexibilityWalk(taper, setUp, setUp.loadMm(), xMm);
    walk.run();
    return walk.sum();
  }
}
