package sagwright.command;

import java.util.Locale;
import sagwright.beam.SetUp;
import sagwright.job.SurveyShaft;
import sagwright.job.TestedSheet;
import sagwright.quantity.Figures;
import sagwright.survey.Repeatability;
import sagwright.survey.SetUpListening;
import sagwright.survey.SurveyAnswer;
import sagwright.survey.SurveyModel;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/** The answer of survey as a person reads it; every ± is 95 %. */
final class SurveyTable {
  private SurveyTable() {}

  static String of(SurveyShaft.Answer surveyed, double lengthMm) {
    SurveyAnswer survey = surveyed.survey();
    TextTable table = new TextTable();
    table.title(
        (surveyed.tag() == null ? "untagged shaft" : surveyed.tag())
            + ", "
            + survey.runs()
            + " runs",
        "± is 95 %");
    for (int i = 0; i < survey.runs(); i++) {
      table.note(run(i, surveyed.sheets().get(i), survey.proposed().standardisedResiduals()[i]));
    }
    for (SurveyModel model : survey.models()) {
      addModel(table, model, lengthMm);
    }
    table.note("proposed: " + survey.proposed().kind().word());
    table.note("why: " + survey.reason());
    if (survey.repeatability() != null) {
      table.note(repeats(survey.repeatability()));
    }
    if (!surveyed.assumed().isEmpty()) {
      table.note("assumed: " + String.join(", ", surveyed.assumed()));
    }
    for (Warning warning : survey.warnings()) {
      table.note("note: " + warning.inWords());
    }
    return table.toString();
  }

  private static String run(int index, TestedSheet tested, double standardisedResidual) {
    SetUp s = tested.sheet().bendTest().setUp().positions();
    SetUpListening heard =
        SetUpListening.of(
            tested.sheet().shaft().taper(), s, tested.sheet().bendTest().ratio().value());
    return String.format(
        Locale.ROOT,
        "run %d  %5.0f to %4.0f mm, load %4.0f, listens to %4.0f … %4.0f mm: %s GPa, %+.1f u",
        index + 1,
        s.supportAMm(),
        s.supportBMm(),
        s.loadMm(),
        heard.fromMm(),
        heard.toMm(),
        Figures.value(
            tested.evaluation().modulusMPa() / 1000,
            new Estimate(0, tested.evaluation().modulusStdUncertaintyMPa() / 1000).halfWidth95()),
        standardisedResidual);
  }

  private static void addModel(TextTable table, SurveyModel model, double lengthMm) {
    String name = model.kind().word();
    switch (model.kind()) {
      case ONE -> modulus(table, name, model.modulusAt(0));
      case RATIO -> {
        modulus(table, name, model.modulusAt(0));
        table.row(
            "  E/G", Figures.withPlusMinus(model.ratio().value(), model.ratio().halfWidth95()), "");
      }
      case STRAIGHT -> {
        modulus(table, name + ", tip end", model.modulusAt(0));
        modulus(table, "  butt end", model.modulusAt(lengthMm));
      }
      case PIECES -> addPieces(table, model, lengthMm);
    }
    table.row("  chi-squared", Figures.rounded(model.chiSquared(), 1), parameters(model));
  }

  private static void addPieces(TextTable table, SurveyModel model, double lengthMm) {
    double[] borders = model.along().breaksMm();
    for (int i = 0; i <= borders.length; i++) {
      double from = i == 0 ? 0 : borders[i - 1];
      double to = i == borders.length ? lengthMm : borders[i];
      modulus(
          table,
          String.format(Locale.ROOT, "%s %.0f to %.0f mm", i == 0 ? "pieces," : " ", from, to),
          model.modulusAt((from + to) / 2));
    }
  }

  private static void modulus(TextTable table, String label, Estimate modulusMPa) {
    table.row(
        label,
        Figures.withPlusMinus(modulusMPa.value() / 1000, modulusMPa.halfWidth95() / 1000),
        "GPa");
  }

  private static String parameters(SurveyModel model) {
    return "with "
        + model.parameters()
        + (model.parameters() == 1 ? " parameter" : " parameters")
        + (model.aicc() == null ? "" : ", AICc " + Figures.rounded(model.aicc(), 1));
  }

  private static String repeats(Repeatability repeats) {
    return String.format(
        Locale.ROOT,
        "repeats scatter by %.0f MPa (%d degrees of freedom), %.0f MPa are stated",
        repeats.standardDeviationMPa(),
        repeats.degreesOfFreedom(),
        repeats.statedMPa());
  }
}
