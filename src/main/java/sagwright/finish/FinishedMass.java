package sagwright.finish;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.Kink;
import sagwright.beam.PointMass;
import sagwright.beam.SpliceSection;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Stretch;

/**
 * How the mass of a finished shaft lies along it: wood, ferrule, splice, weights and extras
 * (docs/contract.md, section 5).
 */
public final class FinishedMass {
  private static final double G_PER_MM3_OF_KG_PER_M3 = 1e-6;

  private final FinishPlan plan;
  private final SplicedTaper wood;
  private final double woodDensity;
  private final double spliceDensity;

  /**
   * @param plan without problems (FinishCheck)
   * @param woodDensityKgM3 of the shaft wood
   */
  public FinishedMass(FinishPlan plan, double woodDensityKgM3) {
    this.plan = plan;
    wood = new SplicedTaper(plan.taper(), plan.splice());
    woodDensity = woodDensityKgM3 * G_PER_MM3_OF_KG_PER_M3;
    spliceDensity =
        plan.splice() == null ? 0 : plan.splice().densityKgM3() * G_PER_MM3_OF_KG_PER_M3;
  }

  /** Mass per length in g/mm, extras left out. */
  public double perMmG(double xMm) {
    double radius = plan.diameterAt(xMm) / 2;
    Ferrule ferrule = plan.ferrule();
    if (ferrule != null && xMm < ferrule.lengthMm()) {
      double bore = circle(ferrule.boreMm() / 2);
      double metal = ferrule.densityKgM3() * G_PER_MM3_OF_KG_PER_M3;
      return woodDensity * bore + metal * (circle(radius) - bore);
    }
    double sum = woodWithin(radius, xMm);
    for (Weight weight : plan.weights()) {
      if (weight.fromMm() <= xMm && xMm < weight.toMm()) {
        double density = weight.densityKgM3() * G_PER_MM3_OF_KG_PER_M3;
        double weightRadius = weight.diameterMm() / 2;
        sum += density * circle(weightRadius) - woodWithin(weightRadius, xMm);
      }
    }
    return sum;
  }

  /** Mass per length in g/mm of the wood within a circle about the centre line. */
  private double woodWithin(double radiusMm, double xMm) {
    if (!wood.isSplicedAt(xMm)) {
      return woodDensity * circle(radiusMm);
    }
    SpliceSection section = new SpliceSection(wood.coreHalfAt(xMm), radiusMm);
    return woodDensity * section.coreAreaMm2() + spliceDensity * section.spliceAreaMm2();
  }

  private static double circle(double radiusMm) {
    return Math.PI * radiusMm * radiusMm;
  }

  /** Where the mass per length has kinks and steps. */
  public List<Kink> kinks() {
    List<Kink> kinks = new ArrayList<>(wood.kinks());
    if (plan.ferrule() != null) {
      kinks.add(Kink.plain(plan.ferrule().lengthMm()));
    }
    for (Weight weight : plan.weights()) {
      kinks.add(Kink.plain(weight.fromMm()));
      kinks.add(Kink.plain(weight.toMm()));
      kinks.addAll(wood.kinksWithin(weight.diameterMm() / 2));
    }
    return kinks;
  }

  /** The extras as points. */
  public List<PointMass> points() {
    return plan.extras().stream().map(e -> new PointMass(e.xMm(), e.massG())).toList();
  }

  /** The whole shaft's mass and balance. */
  public MassAndBalance total() {
    return moments().onShaftOf(plan.lengthMm());
  }

  private Moments moments() {
    List<Stretch> stretches = Stretch.between(0, plan.lengthMm(), kinks(), wood::isGentle);
    double mass = Stretch.integral(stretches, this::perMmG);
    double moment = Stretch.integral(stretches, x -> x * perMmG(x));
    for (Extra extra : plan.extras()) {
      mass += extra.massG();
      moment += extra.massG() * extra.xMm();
    }
    return new Moments(mass, moment);
  }

  /** Mass, and mass times its distance from the tip end. */
  private record Moments(double massG, double momentGMm) {
    MassAndBalance onShaftOf(double lengthMm) {
      return new MassAndBalance(massG, lengthMm - momentGMm / massG);
    }
  }

  /** Mass and moment of a plan as they go with the density of its wood: straight lines. */
  static final class Linear {
    private final double lengthMm;
    private final Moments fixed;
    private final Moments whole;

    private Linear(double lengthMm, Moments fixed, Moments whole) {
      this.lengthMm = lengthMm;
      this.fixed = fixed;
      this.whole = whole;
    }

    MassAndBalance at(double woodDensityKgM3) {
      double share = woodDensityKgM3 / DENSITY_OF_WHOLE_KG_M3;
      return new Moments(
              fixed.massG + share * (whole.massG - fixed.massG),
              fixed.momentGMm + share * (whole.momentGMm - fixed.momentGMm))
          .onShaftOf(lengthMm);
    }
  }

  /** The density at which the second point of those lines is taken: that of water. */
  private static final double DENSITY_OF_WHOLE_KG_M3 = 1000;

  static Linear linear(FinishPlan plan) {
    return new Linear(
        plan.lengthMm(),
        new FinishedMass(plan, 0).moments(),
        new FinishedMass(plan, DENSITY_OF_WHOLE_KG_M3).moments());
  }
}
