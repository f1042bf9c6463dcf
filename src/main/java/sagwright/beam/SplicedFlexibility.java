package sagwright.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How far a shaft of two woods bends at the gauge per newton at the load: ∫M·m/(E_core·I_core +
 * E_splice·I_splice) dx + ∫κ·r·V·v/(A·E_core) dx, in mm/N (docs/contract.md, section 5). Held open
 * at the points of the rule, so that the modulus of the shaft wood may vary along the shaft and be
 * solved for, and so that every derivative is to be had.
 *
 * <p>For a shaft of one wood with one modulus E this is {@code Flexibility.perMm(r) / E}.
 * Immutable.
 */
public final class SplicedFlexibility {
  private static final int MOST_STEPS = 200;

  private final double spliceModulusMPa;
  private final double[] xMm;
  private final double[] bending;
  private final double[] shear;
  private final WoodSection[] sections;

  private SplicedFlexibility(double spliceModulusMPa, List<double[]> points, List<WoodSection> at) {
    this.spliceModulusMPa = spliceModulusMPa;
    xMm = points.stream().mapToDouble(p -> p[0]).toArray();
    bending = points.stream().mapToDouble(p -> p[1]).toArray();
    shear = points.stream().mapToDouble(p -> p[2]).toArray();
    sections = at.toArray(WoodSection[]::new);
  }

  /**
   * @param modulusBreaksMm where the modulus of the shaft wood has a kink or a step
   */
  public static SplicedFlexibility of(SplicedTaper shaft, SetUp setUp, double... modulusBreaksMm) {
    List<Kink> kinks = new ArrayList<>(shaft.kinks());
    kinks.add(Kink.plain(setUp.loadMm()));
    kinks.add(Kink.plain(setUp.gaugeMm()));
    for (double x : modulusBreaksMm) {
      kinks.add(Kink.plain(x));
    }
    UnitLoad load = new UnitLoad(setUp, setUp.loadMm());
    UnitLoad gauge = new UnitLoad(setUp, setUp.gaugeMm());
    List<double[]> points = new ArrayList<>();
    List<WoodSection> sections = new ArrayList<>();
    Stretch.Visitor visitor =
        (x, weight) -> {
          WoodSection section = shaft.sectionAt(x, setUp.turnDegrees());
          sections.add(section);
          points.add(
              new double[] {
                x,
                weight * load.momentAt(x) * gauge.momentAt(x),
                weight * section.shearFactor() * load.shearAt(x) * gauge.shearAt(x)
              });
        };
    Stretch.between(setUp.supportAMm(), setUp.supportBMm(), kinks, shaft::isGentle)
        .forEach(stretch -> stretch.forEachPoint(visitor));
    double spliceModulus = shaft.splice() == null ? 0 : shaft.splice().modulusMPa();
    return new SplicedFlexibility(spliceModulus, points, sections);
  }

  /** The points of the rule, from the tip end of the shaft. */
  public double[] xMm() {
    return xMm.clone();
  }

  /** Deflection per load in mm/N. */
  public double mmPerN(DoubleUnaryOperator coreModulusMPa, double ratio) {
    double sum = 0;
    for (int i = 0; i < xMm.length; i++) {
      double modulus = coreModulusMPa.applyAsDouble(xMm[i]);
      sum +=
          bending[i] / stiffness(i, modulus) + ratio * shear[i] / (sections[i].areaMm2() * modulus);
    }
    return sum;
  }

  /** Deflection per load in mm/N with one modulus of the shaft wood. */
  public double mmPerN(double coreModulusMPa, double ratio) {
    return mmPerN(x -> coreModulusMPa, ratio);
  }

  /**
   * What each point of the rule adds to the derivative of the deflection per load by the shaft
   * wood's modulus, at fixed r and splice modulus, in mm/N per MPa. Their sum is the derivative by
   * one modulus; weighted with ∂E(x)/∂p it is that by a parameter p.
   */
  public double[] byCoreModulus(DoubleUnaryOperator coreModulusMPa, double ratio) {
    double[] by = new double[xMm.length];
    for (int i = 0; i < xMm.length; i++) {
      double modulus = coreModulusMPa.applyAsDouble(xMm[i]);
      double stiffness = stiffness(i, modulus);
      by[i] =
          -bending[i] * sections[i].coreSecondMomentMm4() / (stiffness * stiffness)
              - ratio * shear[i] / (sections[i].areaMm2() * modulus * modulus);
    }
    return by;
  }

  /** The derivative of the deflection per load by the splice wood's modulus, in mm/N per MPa. */
  public double bySpliceModulus(DoubleUnaryOperator coreModulusMPa) {
    double sum = 0;
    for (int i = 0; i < xMm.length; i++) {
      double stiffness = stiffness(i, coreModulusMPa.applyAsDouble(xMm[i]));
      sum -= bending[i] * sections[i].spliceSecondMomentMm4() / (stiffness * stiffness);
    }
    return sum;
  }

  /** The derivative of the deflection per load by one error common to all diameters, in 1/N. */
  public double byDiameter(DoubleUnaryOperator coreModulusMPa, double ratio) {
    double sum = 0;
    for (int i = 0; i < xMm.length; i++) {
      WoodSection section = sections[i];
      double modulus = coreModulusMPa.applyAsDouble(xMm[i]);
      double stiffness = stiffness(i, modulus);
      double stiffnessGain =
          modulus * section.coreSecondMomentByDiameterMm3()
              + spliceModulusMPa * section.spliceSecondMomentByDiameterMm3();
      sum -=
          bending[i] * stiffnessGain / (stiffness * stiffness)
              + ratio
                  * shear[i]
                  * section.areaByDiameterMm()
                  / (section.areaMm2() * section.areaMm2() * modulus);
    }
    return sum;
  }

  /** All of these at once for wood of one modulus, to the last digits the same. */
  public FlexibilityResponse response(double coreModulusMPa, double ratio) {
    double mmPerN = 0;
    double byCore = 0;
    double byDiameter = 0;
    double bySplice = 0;
    for (int i = 0; i < xMm.length; i++) {
      WoodSection section = sections[i];
      double stiffness = stiffness(i, coreModulusMPa);
      double bent = bending[i] / stiffness;
      double bentByStiffness = bent / stiffness;
      double sheared = ratio * shear[i] / (section.areaMm2() * coreModulusMPa);
      mmPerN += bent + sheared;
      byCore -= bentByStiffness * section.coreSecondMomentMm4() + sheared / coreModulusMPa;
      byDiameter -=
          bentByStiffness
                  * (coreModulusMPa * section.coreSecondMomentByDiameterMm3()
                      + spliceModulusMPa * section.spliceSecondMomentByDiameterMm3())
              + sheared * section.areaByDiameterMm() / section.areaMm2();
      bySplice -= bentByStiffness * section.spliceSecondMomentMm4();
    }
    return new FlexibilityResponse(mmPerN, byCore, byDiameter, bySplice);
  }

  /**
   * The modulus of the shaft wood with which the shaft bends so far per newton.
   *
   * @param mmPerN of the shaft alone, above 0: 1/k − C
   */
  public SplicedModulus modulusFor(double mmPerN, double ratio) {
    if (!(mmPerN > 0)) {
      throw new IllegalArgumentException("a shaft bends the way it is pushed, not " + mmPerN);
    }
    // The stiffness 1/(mm/N) rises with E and is concave in it (a sum of springs in series), so
    // that
    // Newton's steps come up from below after the first.
    double modulus = mmPerN(1, ratio) / mmPerN;
    for (int i = 0; i < MOST_STEPS; i++) {
      double now = mmPerN(modulus, ratio);
      double slope = -sum(byCoreModulus(constant(modulus), ratio)) / (now * now);
      double step = (1 / mmPerN - 1 / now) / slope;
      modulus = Math.max(modulus / 2, modulus + step);
      // Newton doubles the digits: what is left after a step this small is below rounding.
      if (Math.abs(step) <= 1e-9 * modulus) {
        break;
      }
    }
    double byModulus = sum(byCoreModulus(constant(modulus), ratio));
    return new SplicedModulus(
        modulus, 1 / byModulus, -bySpliceModulus(constant(modulus)) / byModulus);
  }

  private double stiffness(int i, double coreModulusMPa) {
    return coreModulusMPa * sections[i].coreSecondMomentMm4()
        + spliceModulusMPa * sections[i].spliceSecondMomentMm4();
  }

  private static DoubleUnaryOperator constant(double modulusMPa) {
    return x -> modulusMPa;
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
