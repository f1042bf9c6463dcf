package sagwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import sagwright.finish.Forecast;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.uncertainty.Warning;

/** The answer of forecast and grade: docs/contract.md, section 5. */
final class ForecastAnswer {
  private ForecastAnswer() {}

  static JsonLine line(
      String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    Forecast forecast = graded.forecast();
    JsonLine json =
        new JsonLine()
            .put("order", graded.order().number())
            .put("tag", tag)
            .put("cutFromMm", forecast.cut().fromMm())
            .put("fits", forecast.fits())
            .put("leastSpareMm", forecast.cut().leastSpareMm())
            .put("leastSpareAtMm", forecast.cut().leastSpareAtMm());
    putStiffness(json, graded.grade())
        .put("massG", forecast.massG())
        .put("balanceFromButtMm", forecast.balanceFromButtMm())
        .put("firstBendingHz", forecast.firstBendingHz());
    return putGrade(json, graded.grade())
        .putObjects(
            "alsoAsked",
            graded.alsoAsked().stream()
                .map(also -> putGrade(putStiffness(new JsonLine(), also), also))
                .toList())
        .put("chanceOfAll", graded.chanceOfAll())
        .putTexts("assumed", assumed)
        .putTexts(
            "warnings",
            AnswerWriter.words(
                Stream.concat(ofBlank.stream(), graded.warnings().stream()).toList()));
  }

  private static JsonLine putStiffness(JsonLine json, AskGrade grade) {
    return json.put("stiffnessNPerMm", grade.stiffnessNPerMm().value())
        .put("stiffnessStdUncertaintyNPerMm", grade.stiffnessNPerMm().standardUncertainty());
  }

  private static JsonLine putGrade(JsonLine json, AskGrade grade) {
    return json.put("chanceWithinTolerance", grade.chanceWithinTolerance())
        .put("grade", grade.verdict().word());
  }
}
