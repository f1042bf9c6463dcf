package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import sagwright.beam.SetUp;
import sagwright.modulus.BenchSetUp;

/** A bench's set-up: the {@code setup} of a sheet, or a file that holds nothing else. */
public final class SetUpReader {
  private final JsonObject json;

  SetUpReader(JsonNode node, String path) throws BadDocumentException {
    json =
        new JsonObject(
            node,
            path,
            "supportAMm",
            "supportBMm",
            "loadMm",
            "gaugeMm",
            "turnDegrees",
            "positionUncertaintyMm",
            "frameComplianceMmPerN",
            "frameComplianceUncertaintyMmPerN");
  }

  /**
   * A file that holds a bare set-up.
   *
   * @param lengthMm of the shaft that it is for
   */
  public static SetUpDocument read(String text, double lengthMm) throws BadDocumentException {
    SetUpReader reader = new SetUpReader(JsonDocument.parse(text), "");
    JsonObject json = reader.json;
    return new SetUpDocument(
        reader.positions(lengthMm),
        json.numberOrNull("positionUncertaintyMm", NumberRange.NOT_NEGATIVE),
        json.numberOrNull("frameComplianceMmPerN", NumberRange.NOT_NEGATIVE),
        json.numberOrNull("frameComplianceUncertaintyMmPerN", NumberRange.NOT_NEGATIVE));
  }

  BenchSetUp read(double lengthMm, Assumptions assumptions) throws BadDocumentException {
    return new BenchSetUp(
        positions(lengthMm),
        assumptions.orAssume(
            json, "positionUncertaintyMm", BenchSetUp.ASSUMED_POSITION_UNCERTAINTY_MM),
        assumptions.orAssume(
            json, "frameComplianceMmPerN", BenchSetUp.ASSUMED_FRAME_COMPLIANCE_MM_PER_N),
        json.numberOr("frameComplianceUncertaintyMmPerN", 0, NumberRange.NOT_NEGATIVE));
  }

  private SetUp positions(double lengthMm) throws BadDocumentException {
    return PositionsReader.read(json, lengthMm, json.numberOr("turnDegrees", 0, NumberRange.ANY));
  }
}
