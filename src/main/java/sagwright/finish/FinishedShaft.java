package sagwright.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import sagwright.beam.FlexibilityResponse;
import sagwright.beam.FreeFreeFrequency;
import sagwright.beam.FreeShaft;
import sagwright.beam.Kink;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.WoodSection;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Budget;
import sagwright.uncertainty.Contribution;

/**
 * A finished shaft cut from a given place of a given blank. Round, so that the turn of a set-up
 * plays no part.
 */
public final class FinishedShaft {
  private final BlankWood blank;
  private final PlannedShaft planned;
  private final FinishPlan plan;
  private final double cutFromMm;
  private final DoubleUnaryOperator modulus;

  /**
   * @param plan without problems (FinishCheck)
   */
  public FinishedShaft(BlankWood blank, FinishPlan plan, double cutFromMm) {
    this(blank, new PlannedShaft(plan), cutFromMm);
  }

  FinishedShaft(BlankWood blank, PlannedShaft planned, double cutFromMm) {
    this.blank = blank;
    this.planned = planned;
    this.cutFromMm = cutFromMm;
    plan = planned.plan();
    modulus = modulusOnShaft(blank.modulusMPa(), cutFromMm);
  }

  private static DoubleUnaryOperator modulusOnShaft(ModulusAlong along, double cutFromMm) {
    if (along.variesAlong()) {
      return x -> along.at(x + cutFromMm);
    }
    double everywhere = along.at(0);
    return x -> everywhere;
  }

  /** The stiffness in N/mm at one set-up. */
  public double stiffnessNPerMm(SetUp setUp) {
    return 1 / flexibility(setUp).mmPerN(modulus, blank.modulusToShearRatio());
  }

  /** How much stiffer the splice makes the shaft at one set-up: 0.04 is 4 % stiffer. */
  public double spliceEffect(SetUp setUp) {
    FinishPlan unspliced =
        new FinishPlan(
            plan.taper(),
            plan.diameterUncertaintyMm(),
            plan.cutFromMm(),
            plan.ferrule(),
            null,
            plan.weights(),
            plan.extras());
    double without = new FinishedShaft(blank, unspliced, cutFromMm).stiffnessNPerMm(setUp);
    return stiffnessNPerMm(setUp) / without - 1;
  }

  /** The stiffness at one set-up with what its sources of error do to it. */
  public AskedStiffness asked(SetUp setUp) {
    return blank.modulusMPa().variesAlong()
        ? askedOfVarying(setUp)
        : askedOfOneModulus(setUp, planned.flexibility(setUp));
  }

  /**
   * @param ofOneModulus what {@link PlannedShaft#flexibility} gives for the set-up
   */
  AskedStiffness asked(SetUp setUp, SplicedFlexibility ofOneModulus) {
    return blank.modulusMPa().variesAlong()
        ? askedOfVarying(setUp)
        : askedOfOneModulus(setUp, ofOneModulus);
  }

  private AskedStiffness askedOfOneModulus(SetUp setUp, SplicedFlexibility flexibility) {
    ModulusAlong along = blank.modulusMPa();
    FlexibilityResponse response = flexibility.response(along.at(0), blank.modulusToShearRatio());
    double uncertainty = Math.sqrt(along.covarianceMPa2()[0][0]);
    return asked(setUp, response, new double[] {response.byCoreModulus() * uncertainty});
  }

  private AskedStiffness askedOfVarying(SetUp setUp) {
    double ratio = blank.modulusToShearRatio();
    SplicedFlexibility flexibility = flexibility(setUp);
    double[] byModulus = modulusErrors(flexibility);
    FlexibilityResponse response =
        new FlexibilityResponse(
            flexibility.mmPerN(modulus, ratio),
            Double.NaN,
            flexibility.byDiameter(modulus, ratio),
            flexibility.bySpliceModulus(modulus));
    return asked(setUp, response, byModulus);
  }

  /**
   * @param byModulus what each independent error of the modulus does to the deflection per load
   */
  private AskedStiffness asked(SetUp setUp, FlexibilityResponse response, double[] byModulus) {
    double stiffness = 1 / response.mmPerN();
    double byFlexibility = -stiffness * stiffness;
    List<Double> errors = new ArrayList<>(byModulus.length + 2);
    double modulusVariance = 0;
    for (double each : byModulus) {
      double error = byFlexibility * each;
      errors.add(error);
      modulusVariance += error * error;
    }
    double diameter = byFlexibility * response.byDiameter() * plan.diameterUncertaintyMm();
    double splice = byFlexibility * response.bySpliceModulus() * spliceModulusUncertaintyMPa();
    errors.add(diameter);
    errors.add(splice);
    Budget budget =
        new Budget(
            List.of(
                new Contribution("modulus", Math.sqrt(modulusVariance)),
                new Contribution("diameter", Math.abs(diameter)),
                new Contribution("splice", Math.abs(splice))));
    return new AskedStiffness(setUp, stiffness, errors, budget);
  }

  private double spliceModulusUncertaintyMPa() {
    Splice splice = plan.splice();
    return splice == null ? 0 : splice.modulusMPa() * splice.modulusUncertaintyPercent() / 100;
  }

  /**
   * What each independent error of the modulus does to the deflection per load: its derivatives by
   * the parameters times a square root of their covariance.
   */
  private double[] modulusErrors(SplicedFlexibility flexibility) {
    ModulusAlong along = blank.modulusMPa();
    int n = along.parameterCount();
    double[] atPoints = flexibility.byCoreModulus(modulus, blank.modulusToShearRatio());
    double[] xMm = flexibility.xMm();
    double[] gradient = new double[n];
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < xMm.length; k++) {
        gradient[i] += atPoints[k] * along.shareOf(i, xMm[k] + cutFromMm);
      }
    }
    EigenDecomposition root =
        new EigenDecomposition(new Array2DRowRealMatrix(along.covarianceMPa2()));
    double[] errors = new double[n];
    for (int j = 0; j < n; j++) {
      double uncertainty = Math.sqrt(Math.max(0, root.getRealEigenvalue(j)));
      for (int i = 0; i < n; i++) {
        errors[j] += gradient[i] * root.getV().getEntry(i, j) * uncertainty;
      }
    }
    return errors;
  }

  private SplicedFlexibility flexibility(SetUp setUp) {
    return blank.modulusMPa().variesAlong()
        ? SplicedFlexibility.of(planned.wood(), setUp, modulusBreaks())
        : planned.flexibility(setUp);
  }

  private double[] modulusBreaks() {
    return Arrays.stream(blank.modulusMPa().breaksMm()).map(x -> x - cutFromMm).toArray();
  }

  /** Mass and balance; null where the blank was not weighed. */
  public MassAndBalance massAndBalance() {
    Double density = blank.densityKgM3();
    return density == null ? null : planned.massAndBalance(density);
  }

  /**
   * First bending frequency hung free at both ends, in Hz; null where the blank was not weighed.
   */
  public Double firstBendingHz() {
    Double density = blank.densityKgM3();
    if (density == null) {
      return null;
    }
    FinishedMass mass = new FinishedMass(plan, density);
    List<Kink> kinks = new ArrayList<>(mass.kinks());
    for (double x : modulusBreaks()) {
      kinks.add(Kink.plain(x));
    }
    return FreeFreeFrequency.hz(
        new FreeShaft(
            plan.lengthMm(), this::bendingStiffnessNMm2, mass::perMmG, kinks, mass.points()));
  }

  private double bendingStiffnessNMm2(double xMm) {
    WoodSection section = planned.wood().sectionAt(xMm, 0);
    double splice =
        plan.splice() == null ? 0 : plan.splice().modulusMPa() * section.spliceSecondMomentMm4();
    return modulus.applyAsDouble(xMm) * section.coreSecondMomentMm4() + splice;
  }
}
