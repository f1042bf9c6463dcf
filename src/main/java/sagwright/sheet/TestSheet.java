package sagwright.sheet;

import sagwright.bench.Calibration;
import sagwright.modulus.BenchSetUp;

/** The sheet of a test that is about to be recorded: all but its readings. */
public final class TestSheet {
  private TestSheet() {}

  /**
   * The document of a shaft on a bench.
   *
   * @param shaftDocument a sheet that holds the shaft alone
   * @param setUp as written; its frame compliance goes before the calibration's
   * @param calibration complete
   */
  public static String before(String shaftDocument, SetUpDocument setUp, Calibration calibration) {
    BenchSetUp bench =
        setUp.onBench(
            calibration.frameComplianceMmPerN(), calibration.frameComplianceUncertaintyMmPerN());
    JsonLine positions = SheetWriter.setUpLine(bench, setUp.assumed());
    JsonLine instrument =
        new JsonLine()
            .put("loadUncertaintyN", calibration.load().uncertaintyN())
            .put("loadScaleUncertaintyPercent", calibration.load().scaleUncertaintyPercent())
            .put("gaugeUncertaintyMm", calibration.gauge().uncertaintyMm())
            .put("gaugeScaleUncertaintyPercent", calibration.gauge().scaleUncertaintyPercent())
            .put("gaugeSpringNPerMm", calibration.gauge().springNPerMm());
    return JsonLine.parse(shaftDocument)
        .put("setup", positions)
        .put("instrument", instrument)
        .toString();
  }
}
