package sagwright.check;

import java.util.List;
import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;
import sagwright.uncertainty.Estimate;

/**
 * A ground steel rod on which the bench proves itself, and the stiffness that it ought to show.
 *
 * @param lengthMm from end to end
 * @param diameterMm measured, with its standard uncertainty, in mm
 * @param modulusMPa of its steel, with its standard uncertainty, in MPa
 * @param poissonRatio of its steel; E/G = 2(1 + ν)
 */
public record CheckRod(
    double lengthMm, Estimate diameterMm, Estimate modulusMPa, double poissonRatio) {
  /** Carbon and tool steels lie between 200 and 212 GPa (from memory): half that width as 2 u. */
  public static final Estimate ASSUMED_STEEL_MODULUS_MPA = new Estimate(206_000, 3000);

  /** From memory; its uncertainty counts for nothing beside the modulus's. */
  public static final double ASSUMED_STEEL_POISSON_RATIO = 0.29;

  /**
   * The stiffness in N/mm that the rod shows at a set-up, frame and gauge spring aside: E/J.
   *
   * <p>Uncertainty from the modulus and the diameter, J being made of a bending part that goes with
   * the fourth power of the diameter and a shear part that goes with its square.
   */
  public Estimate stiffnessNPerMm(SetUp setUp) {
    return new Estimate(stiffness(setUp), budget(setUp).combined());
  }

  /** Sources {@code rodModulus} and {@code rodDiameter}, in N/mm. */
  public Budget budget(SetUp setUp) {
    Flexibility j = flexibility(setUp);
    double stiffness = modulusMPa.value() / j.perMm(shearRatio());
    double byModulus = stiffness * modulusMPa.standardUncertainty() / modulusMPa.value();
    double power =
        (4 * j.bendingPerMm() + 2 * shearRatio() * j.shearPerMm()) / j.perMm(shearRatio());
    double byDiameter = stiffness * power * diameterMm.standardUncertainty() / diameterMm.value();
    return new Budget(
        List.of(
            new Contribution("rodModulus", byModulus),
            new Contribution("rodDiameter", byDiameter)));
  }

  /** What the bench has shown against what the rod ought to show. */
  public Comparison compare(SetUp setUp, Estimate shownNPerMm) {
    return new Comparison(stiffnessNPerMm(setUp), shownNPerMm);
  }

  private double stiffness(SetUp setUp) {
    return modulusMPa.value() / flexibility(setUp).perMm(shearRatio());
  }

  private Flexibility flexibility(SetUp setUp) {
    double diameter = diameterMm.value();
    List<Station> ends = List.of(Station.round(0, diameter), Station.round(lengthMm, diameter));
    return Flexibility.of(Taper.round(ends, lengthMm), setUp);
  }

  private double shearRatio() {
    return 2 * (1 + poissonRatio);
  }

  /** Two stiffnesses in N/mm, independent of each other. */
  public record Comparison(Estimate expectedNPerMm, Estimate shownNPerMm) {
    public double differencePercent() {
      return 100 * (shownNPerMm.value() - expectedNPerMm.value()) / expectedNPerMm.value();
    }

    /** Whether the two differ by less than the 95 % uncertainty of their difference. */
    public boolean agrees() {
      double u =
          Math.hypot(expectedNPerMm.standardUncertainty(), shownNPerMm.standardUncertainty());
      return Math.abs(shownNPerMm.value() - expectedNPerMm.value())
          <= Estimate.COVERAGE_FACTOR_95 * u;
    }
  }
}
