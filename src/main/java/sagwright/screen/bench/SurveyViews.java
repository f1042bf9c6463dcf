package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.drawing.ModulusScene;
import sagwright.job.RunsTogether;
import sagwright.job.TestedRun;
import sagwright.quantity.Figures;
import sagwright.survey.NextSetUp;
import sagwright.survey.SetUpListening;
import sagwright.survey.SurveyAnswer;
import sagwright.survey.SurveyModel;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/** Puts what several runs show together into words and a picture. */
final class SurveyViews {
  /** Places along the shaft at which the modulus is drawn. */
  private static final int PLACES = 100;

  private static final double STEP_MM = 1e-6;

  private SurveyViews() {}

  static SurveyView of(RunsTogether together) {
    SurveyAnswer survey = together.survey() == null ? null : together.survey().survey();
    Taper taper = together.newest().shaft().taper();
    List<SurveyView.RunRow> rows = new ArrayList<>();
    List<ModulusScene.HeardRun> heard = new ArrayList<>();
    for (int i = 0; i < together.runs().size(); i++) {
      TestedRun run = together.runs().get(i);
      SetUpListening listening =
          SetUpListening.of(taper, run.setUp(), run.bendTest().ratio().value());
      Estimate modulus = modulusOf(run);
      boolean standsOut = survey != null && survey.runsStandingOut().contains(i);
      double off = survey == null ? 0 : survey.proposed().standardisedResiduals()[i];
      rows.add(
          new SurveyView.RunRow(
              i + 1,
              setUp(run.setUp()),
              String.format(Locale.ROOT, "%.0f to %.0f", listening.fromMm(), listening.toMm()),
              gpa(modulus),
              survey == null ? "" : String.format(Locale.ROOT, "%+.1f", off).replace('-', '−'),
              standsOut));
      heard.add(
          new ModulusScene.HeardRun(
              i + 1, listening.fromMm(), listening.middleMm(), listening.toMm(), modulus));
    }
    return new SurveyView(
        rows,
        survey == null ? List.of() : models(survey, taper.lengthMm()),
        survey == null
            ? "One run tells one modulus. A second, at another place, begins to tell how it varies."
            : "proposed: " + survey.proposed().kind().word() + ", for " + survey.reason(),
        together.next().stream().map(SurveyViews::next).toList(),
        new ModulusScene(
            taper, survey == null ? List.of() : along(survey.proposed(), taper), heard),
        survey == null ? List.of() : survey.warnings().stream().map(Warning::inWords).toList());
  }

  private static Estimate modulusOf(TestedRun run) {
    return new Estimate(run.evaluation().modulusMPa(), run.evaluation().modulusStdUncertaintyMPa());
  }

  private static String gpa(Estimate mpa) {
    return Figures.withPlusMinus(mpa.value() / 1000, mpa.halfWidth95() / 1000);
  }

  private static String setUp(SetUp s) {
    String words =
        String.format(
            Locale.ROOT, "%.0f to %.0f, load %.0f", s.supportAMm(), s.supportBMm(), s.loadMm());
    return s.turnDegrees() == 0
        ? words
        : words + ", at " + Figures.rounded(s.turnDegrees(), 0) + "°";
  }

  private static SurveyView.Next next(NextSetUp next) {
    return new SurveyView.Next(
        next.setUp(),
        String.format(
            Locale.ROOT,
            "supports %.0f and %.0f, load and gauge %.0f mm: ± %.0f %%, now ± %.0f %%",
            next.setUp().supportAMm(),
            next.setUp().supportBMm(),
            next.setUp().loadMm(),
            Estimate.COVERAGE_FACTOR_95 * next.uncertaintyAfterPercent(),
            Estimate.COVERAGE_FACTOR_95 * next.uncertaintyBeforePercent()));
  }

  private static List<SurveyView.ModelRow> models(SurveyAnswer survey, double lengthMm) {
    return survey.models().stream()
        .map(
            model ->
                new SurveyView.ModelRow(
                    model.kind().word(),
                    says(model, lengthMm),
                    Figures.rounded(model.chiSquared(), 1),
                    model.aicc() == null ? "–" : Figures.rounded(model.aicc(), 1),
                    model.kind() == survey.proposed().kind()))
        .toList();
  }

  private static String says(SurveyModel model, double lengthMm) {
    return switch (model.kind()) {
      case ONE -> gpa(model.modulusAt(0));
      case RATIO ->
          gpa(model.modulusAt(0))
              + ", E/G "
              + Figures.withPlusMinus(model.ratio().value(), model.ratio().halfWidth95());
      case STRAIGHT ->
          "tip " + gpa(model.modulusAt(0)) + ", butt " + gpa(model.modulusAt(lengthMm));
      case PIECES -> pieces(model, lengthMm);
    };
  }

  private static String pieces(SurveyModel model, double lengthMm) {
    double[] borders = model.along().breaksMm();
    return IntStream.rangeClosed(0, borders.length)
        .mapToObj(
            i -> {
              double to = i == borders.length ? lengthMm : borders[i];
              double from = i == 0 ? 0 : borders[i - 1];
              return String.format(
                  Locale.ROOT, "%s to %.0f mm", gpa(model.modulusAt((from + to) / 2)), to);
            })
        .collect(Collectors.joining(", "));
  }

  /** The proposed modulus along the shaft; a border is two places a hair apart. */
  private static List<ModulusScene.Place> along(SurveyModel model, Taper taper) {
    double end = taper.lengthMm();
    double[] breaks = model.along().breaksMm();
    return DoubleStream.concat(
            IntStream.rangeClosed(0, PLACES).mapToDouble(i -> end * i / PLACES),
            Arrays.stream(breaks)
                .filter(x -> x > 0 && x < end)
                .flatMap(x -> DoubleStream.of(x - STEP_MM, x)))
        .sorted()
        .mapToObj(x -> new ModulusScene.Place(x, model.modulusAt(x)))
        .toList();
  }
}
