package sagwright.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sagwright.finish.Forecast;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.uncertainty.Warning;

/**
 * The answer of forecast and grade: docs/contract.md, section 5. It is written straight to a
 * generator, keys quoted beforehand: rank writes it by the thousand.
 */
final class ForecastAnswer {
  private static final SerializableString ORDER = new SerializedString("order");
  private static final SerializableString TAG = new SerializedString("tag");
  private static final SerializableString CUT_FROM = new SerializedString("cutFromMm");
  private static final SerializableString FITS = new SerializedString("fits");
  private static final SerializableString LEAST_SPARE = new SerializedString("leastSpareMm");
  private static final SerializableString LEAST_SPARE_AT = new SerializedString("leastSpareAtMm");
  private static final SerializableString STIFFNESS = new SerializedString("stiffnessNPerMm");
  private static final SerializableString STIFFNESS_UNCERTAINTY =
      new SerializedString("stiffnessStdUncertaintyNPerMm");
  private static final SerializableString MASS = new SerializedString("massG");
  private static final SerializableString BALANCE = new SerializedString("balanceFromButtMm");
  private static final SerializableString FREQUENCY = new SerializedString("firstBendingHz");
  private static final SerializableString CHANCE = new SerializedString("chanceWithinTolerance");
  private static final SerializableString GRADE = new SerializedString("grade");
  private static final SerializableString ALSO_ASKED = new SerializedString("alsoAsked");
  private static final SerializableString CHANCE_OF_ALL = new SerializedString("chanceOfAll");
  private static final SerializableString ASSUMED = new SerializedString("assumed");
  private static final SerializableString WARNINGS = new SerializedString("warnings");

  private final JsonGenerator json;

  /** What thousands of blanks have alike is put together once. */
  private List<String> lastAssumed = List.of();

  private String lastAssumedJson = "[]";

  ForecastAnswer(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes one object.
   *
   * @param withFrequency whether the first bending frequency belongs to it
   */
  void write(
      String tag,
      GradedForecast graded,
      List<String> assumed,
      List<Warning> ofBlank,
      boolean withFrequency)
      throws IOException {
    Forecast forecast = graded.forecast();
    json.writeStartObject();
    put(ORDER, graded.order().number());
    put(TAG, tag);
    put(CUT_FROM, forecast.cut().fromMm());
    json.writeFieldName(FITS);
    json.writeBoolean(forecast.fits());
    put(LEAST_SPARE, forecast.cut().leastSpareMm());
    put(LEAST_SPARE_AT, forecast.cut().leastSpareAtMm());
    putStiffness(graded.grade());
    put(MASS, forecast.massG());
    put(BALANCE, forecast.balanceFromButtMm());
    if (withFrequency) {
      put(FREQUENCY, forecast.firstBendingHz());
    }
    putGrade(graded.grade());
    json.writeFieldName(ALSO_ASKED);
    json.writeStartArray();
    for (AskGrade also : graded.alsoAsked()) {
      json.writeStartObject();
      putStiffness(also);
      putGrade(also);
      json.writeEndObject();
    }
    json.writeEndArray();
    put(CHANCE_OF_ALL, graded.chanceOfAll());
    putAssumed(assumed);
    List<String> warnings = new ArrayList<>();
    for (Warning warning : ofBlank) {
      warnings.add(warning.inWords());
    }
    for (Warning warning : graded.warnings()) {
      warnings.add(warning.inWords());
    }
    put(WARNINGS, warnings);
    json.writeEndObject();
  }

  private void putStiffness(AskGrade grade) throws IOException {
    put(STIFFNESS, grade.stiffnessNPerMm().value());
    put(STIFFNESS_UNCERTAINTY, grade.stiffnessNPerMm().standardUncertainty());
  }

  private void putGrade(AskGrade grade) throws IOException {
    put(CHANCE, grade.chanceWithinTolerance());
    put(GRADE, grade.verdict().word());
  }

  private void put(SerializableString key, String text) throws IOException {
    json.writeFieldName(key);
    json.writeString(text);
  }

  /** Null where it is null or not finite. */
  private void put(SerializableString key, Double value) throws IOException {
    json.writeFieldName(key);
    if (value == null || !Double.isFinite(value)) {
      json.writeNull();
    } else {
      json.writeNumber(value.doubleValue());
    }
  }

  private void putAssumed(List<String> assumed) throws IOException {
    if (!assumed.equals(lastAssumed)) {
      lastAssumed = assumed;
      lastAssumedJson = JsonLine.arrayOf(assumed);
    }
    json.writeFieldName(ASSUMED);
    json.writeRawValue(lastAssumedJson);
  }

  private void put(SerializableString key, List<String> texts) throws IOException {
    json.writeFieldName(key);
    json.writeStartArray();
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
