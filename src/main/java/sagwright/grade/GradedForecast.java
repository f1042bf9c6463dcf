package sagwright.grade;

import java.util.List;
import sagwright.finish.Forecast;
import sagwright.uncertainty.Warning;

/**
 * A forecast held against an order.
 *
 * @param sureness that its words were given by
 * @param grade of the order's ask
 * @param alsoAsked grades of what else is asked, in the order's order
 * @param chanceOfAll that all of them lie within their tolerances, the errors that they share
 *     counted as shared
 * @param warnings of the forecast, and of mass and balance that lie outside their tolerance
 */
public record GradedForecast(
    Order order,
    Forecast forecast,
    Sureness sureness,
    AskGrade grade,
    List<AskGrade> alsoAsked,
    double chanceOfAll,
    List<Warning> warnings) {
  public GradedForecast {
    alsoAsked = List.copyOf(alsoAsked);
    warnings = List.copyOf(warnings);
  }
}
