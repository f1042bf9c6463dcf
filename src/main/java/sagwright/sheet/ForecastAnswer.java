package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import sagwright.finish.Forecast;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.uncertainty.Warning;

/** The answer of forecast and grade: docs/contract.md, section 5. */
final class ForecastAnswer {
  private ForecastAnswer() {}

  static String of(String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    return text(tag, graded, assumed, ofBlank, true);
  }

  /** Without the first bending frequency. */
  static String withoutFrequency(
      String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    return text(tag, graded, assumed, ofBlank, false);
  }

  private static String text(
      String tag,
      GradedForecast graded,
      List<String> assumed,
      List<Warning> ofBlank,
      boolean withFrequency) {
    Forecast forecast = graded.forecast();
    JsonText json =
        new JsonText()
            .put("order", graded.order().number())
            .put("tag", tag)
            .put("cutFromMm", forecast.cut().fromMm())
            .put("fits", forecast.fits())
            .put("leastSpareMm", forecast.cut().leastSpareMm())
            .put("leastSpareAtMm", forecast.cut().leastSpareAtMm());
    putStiffness(json, graded.grade());
    json.put("massG", forecast.massG()).put("balanceFromButtMm", forecast.balanceFromButtMm());
    if (withFrequency) {
      json.put("firstBendingHz", forecast.firstBendingHz());
    }
    putGrade(json, graded.grade());
    json.beginArray("alsoAsked");
    for (AskGrade also : graded.alsoAsked()) {
      json.beginObject();
      putStiffness(json, also);
      putGrade(json, also);
      json.endObject();
    }
    List<String> warnings = new ArrayList<>();
    ofBlank.forEach(warning -> warnings.add(warning.inWords()));
    graded.warnings().forEach(warning -> warnings.add(warning.inWords()));
    return json.endArray()
        .put("chanceOfAll", graded.chanceOfAll())
        .putTexts("assumed", assumed)
        .putTexts("warnings", warnings)
        .end();
  }

  private static void putStiffness(JsonText json, AskGrade grade) {
    json.put("stiffnessNPerMm", grade.stiffnessNPerMm().value())
        .put("stiffnessStdUncertaintyNPerMm", grade.stiffnessNPerMm().standardUncertainty());
  }

  private static void putGrade(JsonText json, AskGrade grade) {
    json.put("chanceWithinTolerance", grade.chanceWithinTolerance())
        .put("grade", grade.verdict().word());
  }
}
