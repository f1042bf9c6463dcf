package sagwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import sagwright.grade.GradedForecast;
import sagwright.modulus.Evaluation;
import sagwright.modulus.MonteCarlo;
import sagwright.survey.SurveyAnswer;
import sagwright.uncertainty.Warning;

/** Answers as one JSON object on one line, keys as docs/contract.md has them. */
public final class AnswerWriter {
  private AnswerWriter() {}

  /** What a sheet's run has shown: docs/contract.md, section 4. */
  public static String evaluation(Sheet sheet, Evaluation evaluation) {
    return evaluationLine(sheet, evaluation, List.of()).toString();
  }

  /**
   * The same for a run from a bench.
   *
   * @param ofBench what the bench found amiss while the run was recorded
   */
  public static String evaluation(Sheet sheet, Evaluation evaluation, List<Warning> ofBench) {
    return evaluationLine(sheet, evaluation, ofBench).toString();
  }

  /** The same with the Monte Carlo second opinion. */
  public static String evaluation(Sheet sheet, Evaluation evaluation, MonteCarlo second) {
    return evaluationLine(sheet, evaluation, List.of())
        .put(
            "monteCarlo",
            new JsonLine()
                .put("draws", second.draws())
                .put("modulusMPa", second.modulusMPa())
                .put("modulusStdUncertaintyMPa", second.modulusStdUncertaintyMPa())
                .put("low95MPa", second.low95MPa())
                .put("high95MPa", second.high95MPa()))
        .toString();
  }

  /**
   * What a blank will be when it is finished, and how it suits the order: docs/contract.md, section
   * 5.
   *
   * @param ofBlank warnings of the blank's own evaluation
   */
  public static String forecast(
      String tag, GradedForecast graded, List<String> assumed, List<Warning> ofBlank) {
    AnswerLines line = new AnswerLines(1);
    line.addForecast(tag, graded, assumed, ofBlank);
    return line.toString();
  }

  /**
   * What several runs on one shaft have shown together: docs/contract.md, section 8.
   *
   * @param tag null where no sheet has one
   */
  public static String survey(
      String tag, double lengthMm, SurveyAnswer survey, List<String> assumed) {
    return SurveyAnswerLine.of(tag, lengthMm, survey, assumed).toString();
  }

  /** What stands in the place of an answer that could not be given. */
  public static String error(String file, String why) {
    return new JsonLine().put("file", file).put("error", why).toString();
  }

  private static JsonLine evaluationLine(
      Sheet sheet, Evaluation evaluation, List<Warning> ofBench) {
    return new JsonLine()
        .put("tag", sheet.tag())
        .put("stiffnessNPerMm", evaluation.fit().stiffnessNPerMm())
        .put("stiffnessStdUncertaintyNPerMm", evaluation.stiffnessStdUncertaintyNPerMm())
        .put("shaftStiffnessNPerMm", evaluation.shaftStiffnessNPerMm())
        .put("modulusMPa", evaluation.modulusMPa())
        .put("modulusStdUncertaintyMPa", evaluation.modulusStdUncertaintyMPa())
        .put("modulusAt12PercentMPa", evaluation.modulusAt12PercentMPa())
        .put("densityKgM3", evaluation.densityKgM3())
        .put("windowFromN", evaluation.fit().windowFromN())
        .put("windowToN", evaluation.fit().windowToN())
        .put("samplesUsed", evaluation.fit().samplesUsed())
        .put("samplesSetAside", evaluation.fit().samplesSetAside())
        .put("hysteresisPercent", evaluation.fit().hysteresisPercent())
        .put("peakStressMPa", evaluation.peakStressMPa())
        .putObjects(
            "uncertaintyBudget",
            evaluation.budget().contributions().stream()
                .map(
                    c ->
                        new JsonLine()
                            .put("source", c.source())
                            .put("contributionMPa", c.standardUncertainty()))
                .toList())
        .putTexts("assumed", sheet.assumed())
        .putTexts(
            "warnings",
            words(Stream.concat(evaluation.warnings().stream(), ofBench.stream()).toList()));
  }

  static List<String> words(List<Warning> warnings) {
    return warnings.stream().map(Warning::inWords).toList();
  }
}
