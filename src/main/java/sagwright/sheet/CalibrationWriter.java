package sagwright.sheet;

import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;

/** Calibrations as {@link CalibrationReader} reads them. */
public final class CalibrationWriter {
  private CalibrationWriter() {}

  public static String write(Calibration calibration) {
    JsonLine json =
        new JsonLine()
            .put("format", CalibrationReader.FORMAT)
            .put("made", calibration.made().toString())
            .put("validDays", calibration.validDays());
    if (calibration.by() != null) {
      json.put("by", calibration.by());
    }
    LoadCalibration load = calibration.load();
    if (load != null) {
      json.put(
          "load",
          new JsonLine()
              .put("newtonPerCount", load.newtonPerCount())
              .put("scaleUncertaintyPercent", load.scaleUncertaintyPercent())
              .put("uncertaintyN", load.uncertaintyN())
              .put("greatestN", load.greatestN()));
    }
    GaugeCalibration gauge = calibration.gauge();
    if (gauge != null) {
      json.put(
          "gauge",
          new JsonLine()
              .put("mmPerStep", gauge.mmPerStep())
              .put("scaleUncertaintyPercent", gauge.scaleUncertaintyPercent())
              .put("uncertaintyMm", gauge.uncertaintyMm())
              .put("greatestMm", gauge.greatestMm())
              .put("springNPerMm", gauge.springNPerMm()));
    }
    return json.put("frameComplianceMmPerN", calibration.frameComplianceMmPerN())
        .put("frameComplianceUncertaintyMmPerN", calibration.frameComplianceUncertaintyMmPerN())
        .toString();
  }
}
