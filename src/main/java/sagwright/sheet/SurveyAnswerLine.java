package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import sagwright.survey.SurveyAnswer;
import sagwright.survey.SurveyModel;
import sagwright.uncertainty.Estimate;

/** The answer of survey: docs/contract.md, section 8. */
final class SurveyAnswerLine {
  private SurveyAnswerLine() {}

  static JsonLine of(String tag, double lengthMm, SurveyAnswer survey, List<String> assumed) {
    return new JsonLine()
        .put("tag", tag)
        .put("runs", survey.runs())
        .put("proposed", survey.proposed().kind().word())
        .putObjects("models", survey.models().stream().map(m -> model(m, lengthMm)).toList())
        .putWhole("runsStandingOut", survey.runsStandingOut())
        .putTexts("assumed", assumed)
        .putTexts("warnings", AnswerWriter.words(survey.warnings()));
  }

  private static JsonLine model(SurveyModel model, double lengthMm) {
    JsonLine line = new JsonLine().put("kind", model.kind().word());
    switch (model.kind()) {
      case ONE -> modulus(line, "modulus", model.modulusAt(0));
      case RATIO -> {
        modulus(line, "modulus", model.modulusAt(0));
        line.put("modulusToShearRatio", model.ratio().value())
            .put("modulusToShearRatioStdUncertainty", model.ratio().standardUncertainty());
      }
      case STRAIGHT -> {
        modulus(line, "modulusAtTip", model.modulusAt(0));
        modulus(line, "modulusAtButt", model.modulusAt(lengthMm));
      }
      case PIECES -> line.putObjects("pieces", pieces(model, lengthMm));
    }
    return line.put("chiSquared", model.chiSquared())
        .put("parameters", model.parameters())
        .put("aicc", model.aicc());
  }

  private static List<JsonLine> pieces(SurveyModel model, double lengthMm) {
    double[] borders = model.along().breaksMm();
    List<JsonLine> pieces = new ArrayList<>();
    for (int i = 0; i <= borders.length; i++) {
      double from = i == 0 ? 0 : borders[i - 1];
      double to = i == borders.length ? lengthMm : borders[i];
      pieces.add(
          modulus(
              new JsonLine().put("fromMm", from).put("toMm", to),
              "modulus",
              model.modulusAt((from + to) / 2)));
    }
    return pieces;
  }

  private static JsonLine modulus(JsonLine line, String name, Estimate modulusMPa) {
    return line.put(name + "MPa", modulusMPa.value())
        .put(name + "StdUncertaintyMPa", modulusMPa.standardUncertainty());
  }
}
