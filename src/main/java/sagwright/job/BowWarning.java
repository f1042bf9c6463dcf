package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.grade.GradedForecast;
import sagwright.uncertainty.Warning;

/**
 * A blank so far off straight that planing it round would run out of wood: twice the bow is more
 * than the least spare, for the axis lies off by the bow and spare is counted across the diameter.
 */
public record BowWarning(double bowMm, double leastSpareMm) implements Warning {
  /**
   * The same forecast, with this warning where it is due.
   *
   * @param bowMm null where not measured
   */
  public static GradedForecast beside(GradedForecast graded, Double bowMm) {
    double spare = graded.forecast().cut().leastSpareMm();
    if (bowMm == null || !graded.forecast().fits() || 2 * bowMm <= spare) {
      return graded;
    }
    List<Warning> warnings = new ArrayList<>(graded.warnings());
    warnings.add(new BowWarning(bowMm, spare));
    return new GradedForecast(
        graded.order(),
        graded.forecast(),
        graded.sureness(),
        graded.grade(),
        graded.alsoAsked(),
        graded.chanceOfAll(),
        warnings);
  }

  @Override
  public String inWords() {
    return String.format(
        Locale.ROOT,
        "the blank is %.2f mm off straight: twice that is more than the %.2f mm that are spare",
        bowMm,
        leastSpareMm);
  }
}
