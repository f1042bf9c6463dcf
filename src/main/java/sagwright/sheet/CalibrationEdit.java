package sagwright.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import sagwright.bench.LoadCalibration;
import sagwright.uncertainty.Estimate;

/**
 * Puts a newly made part into a calibration and keeps the rest of the document as it stands, keys
 * that begin with {@code x-} among it. Written over several lines, for people who look into it.
 */
public final class CalibrationEdit {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private final ObjectNode document;

  private CalibrationEdit(ObjectNode document) {
    this.document = document;
  }

  /** A calibration with no part yet, valid for a year. */
  public static CalibrationEdit begin(Instant made) {
    return new CalibrationEdit(
        MAPPER
            .createObjectNode()
            .put("format", CalibrationReader.FORMAT)
            .put("made", made.truncatedTo(ChronoUnit.SECONDS).toString())
            .put("validDays", CalibrationReader.ASSUMED_VALID_DAYS));
  }

  /**
   * @param text a whole and faultless calibration; one in the making may lack parts
   */
  public static CalibrationEdit of(String text) throws BadDocumentException {
    CalibrationReader.read(text);
    return new CalibrationEdit((ObjectNode) JsonDocument.parse(text));
  }

  public CalibrationEdit withLoad(LoadCalibration load) {
    part("load")
        .put("newtonPerCount", load.newtonPerCount())
        .put("scaleUncertaintyPercent", load.scaleUncertaintyPercent())
        .put("uncertaintyN", load.uncertaintyN())
        .put("greatestN", load.greatestN());
    return this;
  }

  /** The stem's spring is no part of what blocks tell: one that is there stays, else 0. */
  public CalibrationEdit withGauge(GaugeLine gauge) {
    ObjectNode part =
        part("gauge")
            .put("mmPerStep", gauge.mmPerStep())
            .put("scaleUncertaintyPercent", gauge.scaleUncertaintyPercent())
            .put("uncertaintyMm", gauge.uncertaintyMm())
            .put("greatestMm", gauge.greatestMm());
    if (!part.has("springNPerMm")) {
      part.put("springNPerMm", 0);
    }
    return this;
  }

  /**
   * The stem's spring, on a calibration whose gauge is there.
   *
   * @param springNPerMm 0 or above
   */
  public CalibrationEdit withSpring(double springNPerMm) {
    part("gauge").put("springNPerMm", springNPerMm);
    return this;
  }

  /**
   * @param complianceMmPerN 0 or above
   */
  public CalibrationEdit withFrame(Estimate complianceMmPerN) {
    document
        .put("frameComplianceMmPerN", complianceMmPerN.value())
        .put("frameComplianceUncertaintyMmPerN", complianceMmPerN.standardUncertainty());
    return this;
  }

  private ObjectNode part(String key) {
    return document.has(key) ? (ObjectNode) document.get(key) : document.putObject(key);
  }

  /** The document as text, with a line end behind it. */
  public String text() {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(document) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree in memory is written without a fault", e);
    }
  }

  /**
   * What blocks tell of a gauge: its {@link sagwright.bench.GaugeCalibration} but for the spring.
   */
  public record GaugeLine(
      double mmPerStep, double scaleUncertaintyPercent, double uncertaintyMm, double greatestMm) {}
}
