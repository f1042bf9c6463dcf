package sagwright.check;

import java.util.List;
import sagwright.beam.Flexibility;
import sagwright.beam.Taper;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/**
 * How far the frame gives per newton, from a run on a bar whose modulus is known: {@code C = 1/k −
 * J(c,g)/(E + s·J(g,g))} (docs/contract.md, section 9).
 *
 * @param stiffnessNPerMm k, as the bench shows it, frame in
 * @param complianceMmPerN C; below 0 where the bar gave less than its modulus says
 * @param warnings of the run's line
 */
public record FrameCompliance(
    Estimate stiffnessNPerMm, Estimate complianceMmPerN, List<Warning> warnings) {
  public FrameCompliance {
    warnings = List.copyOf(warnings);
  }

  /**
   * What the set-up says of the frame is not used.
   *
   * <p>The uncertainty is that of the known modulus and all that the run's own budget holds (line,
   * scales, diameters, positions, ratio), carried over by how the modulus moves with C.
   *
   * @param bar of one material: a splice has no place in the formula
   * @param modulusMPa known, above 0, with its standard uncertainty
   * @throws PoorRunException where the run gives no line
   */
  public static FrameCompliance of(BendTest bar, Estimate modulusMPa, Evaluator evaluator)
      throws PoorRunException {
    if (bar.shaft().splice() != null) {
      throw new IllegalArgumentException("a bar of two materials tells nothing of the frame");
    }
    Evaluation shown = evaluator.evaluate(withFrame(bar, 0));
    Taper taper = bar.shaft().taper();
    double ratio = bar.ratio().value();
    double atLoad = Flexibility.of(taper, bar.setUp().positions()).perMm(ratio);
    double atGauge = Flexibility.atGauge(taper, bar.setUp().positions()).perMm(ratio);
    double resistedMPa = modulusMPa.value() + bar.instrument().gaugeSpringNPerMm() * atGauge;
    double compliance = 1 / shown.fit().stiffnessNPerMm() - atLoad / resistedMPa;

    Evaluation atFound = evaluator.evaluate(withFrame(bar, compliance));
    double modulusPerCompliance = resistedMPa * resistedMPa / atLoad;
    double uncertainty =
        Math.hypot(modulusMPa.standardUncertainty(), atFound.modulusStdUncertaintyMPa())
            / modulusPerCompliance;
    return new FrameCompliance(
        new Estimate(shown.fit().stiffnessNPerMm(), shown.stiffnessStdUncertaintyNPerMm()),
        new Estimate(compliance, uncertainty),
        shown.fit().warnings());
  }

  private static BendTest withFrame(BendTest bar, double complianceMmPerN) {
    BenchSetUp setUp = bar.setUp();
    return new BendTest(
        bar.shaft(),
        new BenchSetUp(setUp.positions(), setUp.positionUncertaintyMm(), complianceMmPerN, 0),
        bar.instrument(),
        bar.ratio(),
        bar.readings());
  }
}
