package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;
import sagwright.modulus.BenchSetUp;

/** Calibrations, {@code sagwright-calibration/1}: docs/contract.md, section 6. */
public final class CalibrationReader {
  public static final String FORMAT = "sagwright-calibration/1";

  /** How long a calibration holds where it does not say (common practice, no source: a year). */
  static final int ASSUMED_VALID_DAYS = 365;

  private static final int GREATEST_VALID_DAYS = 36_500;

  private CalibrationReader() {}

  /** A calibration from a file, with one of its two parts at least. */
  public static Calibration readFile(Path file) throws BadDocumentException {
    return read(DocumentText.ofFile(file));
  }

  public static Calibration read(String text) throws BadDocumentException {
    JsonNode root = JsonDocument.parse(text);
    new JsonFormat(root).require(FORMAT);
    JsonObject json =
        new JsonObject(
            root,
            "",
            "format",
            "made",
            "validDays",
            "by",
            "load",
            "gauge",
            "frameComplianceMmPerN",
            "frameComplianceUncertaintyMmPerN");
    return new Calibration(
        made(json),
        validDays(json),
        json.textOrNull("by"),
        json.has("load") ? load(json) : null,
        json.has("gauge") ? gauge(json) : null,
        json.numberOr(
            "frameComplianceMmPerN",
            BenchSetUp.ASSUMED_FRAME_COMPLIANCE_MM_PER_N,
            NumberRange.NOT_NEGATIVE),
        json.numberOr("frameComplianceUncertaintyMmPerN", 0, NumberRange.NOT_NEGATIVE));
  }

  /** The calibration, where a run can be recorded by it; else the complaint names what it lacks. */
  public static Calibration requireComplete(Calibration calibration) throws BadDocumentException {
    if (!calibration.isComplete()) {
      throw new BadDocumentException(
          calibration.load() == null ? "load" : "gauge", "is missing: no run without it");
    }
    return calibration;
  }

  private static Instant made(JsonObject json) throws BadDocumentException {
    try {
      return OffsetDateTime.parse(json.text("made")).toInstant();
    } catch (DateTimeException e) {
      throw json.bad(
          "made", "is " + json.shown("made") + ", must be a moment as 2026-03-02T09:00:00Z");
    }
  }

  private static int validDays(JsonObject json) throws BadDocumentException {
    double days = json.numberOr("validDays", ASSUMED_VALID_DAYS, NumberRange.ABOVE_ZERO);
    if (days != Math.rint(days) || days > GREATEST_VALID_DAYS) {
      throw json.bad("validDays", "is " + json.shown("validDays") + ", must be whole days");
    }
    return (int) days;
  }

  private static LoadCalibration load(JsonObject calibration) throws BadDocumentException {
    JsonObject json =
        calibration.object(
            "load", "newtonPerCount", "scaleUncertaintyPercent", "uncertaintyN", "greatestN");
    return new LoadCalibration(
        json.number("newtonPerCount", NumberRange.NOT_ZERO),
        json.number("scaleUncertaintyPercent", NumberRange.NOT_NEGATIVE),
        json.number("uncertaintyN", NumberRange.NOT_NEGATIVE),
        json.number("greatestN", NumberRange.ABOVE_ZERO));
  }

  private static GaugeCalibration gauge(JsonObject calibration) throws BadDocumentException {
    JsonObject json =
        calibration.object(
            "gauge",
            "mmPerStep",
            "scaleUncertaintyPercent",
            "uncertaintyMm",
            "greatestMm",
            "springNPerMm");
    return new GaugeCalibration(
        json.number("mmPerStep", NumberRange.NOT_ZERO),
        json.number("scaleUncertaintyPercent", NumberRange.NOT_NEGATIVE),
        json.number("uncertaintyMm", NumberRange.NOT_NEGATIVE),
        json.number("greatestMm", NumberRange.ABOVE_ZERO),
        json.numberOr("springNPerMm", 0, NumberRange.NOT_NEGATIVE));
  }
}
