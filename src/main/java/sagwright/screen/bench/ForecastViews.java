package sagwright.screen.bench;

import java.util.Locale;
import java.util.Optional;
import sagwright.finish.Cut;
import sagwright.finish.Forecast;
import sagwright.grade.AskGrade;
import sagwright.grade.GradedForecast;
import sagwright.screen.ShopUnits;
import sagwright.screen.finish.GradeWords;
import sagwright.screen.finish.PlanWords;

/** What the finished cue will be, in the bench's words. */
final class ForecastViews {
  private ForecastViews() {}

  static BenchView.Forecast of(FinishedCue finished, ShopUnits units) {
    GradedForecast graded = finished.planned().graded();
    AskGrade grade = graded.grade();
    return new BenchView.Forecast(
        grade.stiffnessNPerMm(),
        grade.verdict(),
        graded.chanceOfAll(),
        graded.sureness().chance(),
        inside(graded),
        weightAndBalance(graded.forecast(), units),
        finished,
        units);
  }

  private static String inside(GradedForecast graded) {
    String inside = PlanWords.insideAsked(graded);
    Cut cut = graded.forecast().cut();
    return cut.fits()
        ? inside
        : String.format(
            Locale.ROOT,
            "%s; %.1f mm too thin at %.0f mm",
            inside,
            -cut.leastSpareMm(),
            cut.leastSpareAtMm());
  }

  private static String weightAndBalance(Forecast forecast, ShopUnits units) {
    return forecast.massG() == null
        ? ""
        : units.massText(forecast.massG())
            + ", balance "
            + units.lengthText(forecast.balanceFromButtMm());
  }

  /** How the grade that was just given differs from the one before it. */
  static Optional<String> changed(FinishedCue finished) {
    return Optional.ofNullable(finished.change())
        .map(
            change ->
                "the grade "
                    + GradeWords.of(change, finished.planned().graded().sureness().chance()));
  }
}
