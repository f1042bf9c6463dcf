package sagwright.grade;

import java.util.ArrayList;
import java.util.List;
import sagwright.finish.AskedStiffness;
import sagwright.finish.BlankWood;
import sagwright.finish.Forecast;
import sagwright.finish.ForecastRequest;
import sagwright.finish.Forecaster;
import sagwright.finish.PlanForecaster;
import sagwright.uncertainty.Warning;

/** Holds blanks against orders: docs/contract.md, section 5. */
public final class Grader {
  /**
   * Below this the least likely ask alone stands for all: the others change nothing that counts.
   */
  private static final double NEGLIGIBLE = 1e-12;

  private final Sureness sureness;

  public Grader(Sureness sureness) {
    this.sureness = sureness;
  }

  /** What is to be forecast of a blank for an order without problems (OrderCheck). */
  public static ForecastRequest request(BlankWood blank, Order order) {
    return new ForecastRequest(
        blank,
        order.finish(),
        order.asks().stream().map(Ask::setUp).toList(),
        order.ask().stiffnessNPerMm());
  }

  /** What forecasts many blanks for one order without problems (OrderCheck). */
  public static PlanForecaster forecaster(Order order) {
    return new PlanForecaster(
        order.finish(),
        order.asks().stream().map(Ask::setUp).toList(),
        order.ask().stiffnessNPerMm());
  }

  /** Forecasts and grades a blank for an order without problems (OrderCheck). */
  public GradedForecast grade(BlankWood blank, Order order) {
    return grade(order, Forecaster.forecast(request(blank, order)));
  }

  /** Grades a forecast that was made on this order's {@link #request}. */
  public GradedForecast grade(Order order, Forecast forecast) {
    List<Ask> asks = order.asks();
    List<AskedStiffness> stiffnesses = forecast.stiffnesses();
    List<AskGrade> grades = new ArrayList<>();
    for (int i = 0; i < asks.size(); i++) {
      grades.add(AskGrade.of(asks.get(i), stiffnesses.get(i).estimate(), sureness));
    }
    return new GradedForecast(
        order,
        forecast,
        sureness,
        grades.get(0),
        grades.subList(1, grades.size()),
        chanceOfAll(leastOf(grades), order, stiffnesses),
        warnings(order.ask(), forecast));
  }

  /**
   * The chance that all stiffnesses lie within the tolerances of what an order asks; no likelier
   * than the least likely of them, rounding or not. Absolute error below 1e-8, and where one of
   * them is all but impossible below 1e-12.
   *
   * @param stiffnesses one an ask, in the order's order
   */
  public static double chanceOfAll(Order order, List<AskedStiffness> stiffnesses) {
    return chanceOfAll(leastChance(order, stiffnesses), order, stiffnesses);
  }

  private static double leastOf(List<AskGrade> grades) {
    double least = 1;
    for (AskGrade grade : grades) {
      least = Math.min(least, grade.chanceWithinTolerance());
    }
    return least;
  }

  private static double chanceOfAll(double least, Order order, List<AskedStiffness> stiffnesses) {
    return least < NEGLIGIBLE || stiffnesses.size() == 1
        ? least
        : Math.min(least, JointChance.ofAll(order.asks(), stiffnesses));
  }

  /** The least of the chances that the stiffnesses lie, each alone, within the tolerances asked. */
  public static double leastChance(Order order, List<AskedStiffness> stiffnesses) {
    List<Ask> asks = order.asks();
    double least = 1;
    for (int i = 0; i < asks.size(); i++) {
      Ask ask = asks.get(i);
      least =
          Math.min(
              least,
              Chance.between(
                  ask.lowestNPerMm(), ask.highestNPerMm(), stiffnesses.get(i).estimate()));
    }
    return least;
  }

  private static List<Warning> warnings(Ask ask, Forecast forecast) {
    List<Warning> warnings = new ArrayList<>(forecast.warnings());
    Aim mass = ask.massG();
    if (mass != null && forecast.massG() != null && mass.isMissedBy(forecast.massG())) {
      warnings.add(new GradeWarning.MassOutside(forecast.massG(), mass));
    }
    Aim balance = ask.balanceFromButtMm();
    if (balance != null
        && forecast.balanceFromButtMm() != null
        && balance.isMissedBy(forecast.balanceFromButtMm())) {
      warnings.add(new GradeWarning.BalanceOutside(forecast.balanceFromButtMm(), balance));
    }
    return warnings;
  }
}
