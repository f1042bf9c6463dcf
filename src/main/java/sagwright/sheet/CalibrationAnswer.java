package sagwright.sheet;

import java.util.List;
import sagwright.check.FrameCompliance;
import sagwright.check.LineCalibration;
import sagwright.uncertainty.Warning;

/** What {@code calibrate} prints: docs/contract.md, section 9, one object on one line. */
public final class CalibrationAnswer {
  private CalibrationAnswer() {}

  /** Of load or gauge. */
  public static String line(LineCalibration line) {
    Double number = line.forceClass() == null ? null : line.forceClass().number();
    return new JsonLine()
        .put("slope", line.slope())
        .put("slopeStdUncertainty", line.slopeStdUncertainty())
        .put("residualStd", line.residualStd())
        .putNumbers("residuals", line.residuals())
        .put("greatestError", line.terms().greatestErrorPercent())
        .put("zeroReturn", line.terms().zeroReturnPercent())
        .put("repeatability", line.terms().repeatabilityPercent())
        .put("reversibility", line.terms().reversibilityPercent())
        .put("class", number)
        .toString();
  }

  /**
   * Of the frame.
   *
   * @param assumed what the bar's sheet took for granted
   */
  public static String frame(FrameCompliance frame, List<String> assumed) {
    return new JsonLine()
        .put("frameComplianceMmPerN", frame.complianceMmPerN().value())
        .put("frameComplianceStdUncertaintyMmPerN", frame.complianceMmPerN().standardUncertainty())
        .putTexts("assumed", assumed)
        .putTexts("warnings", frame.warnings().stream().map(Warning::inWords).toList())
        .toString();
  }
}
