package sagwright.choose;

import sagwright.finish.Cut;
import sagwright.finish.Forecast;
import sagwright.finish.PlanForecaster;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.Sureness;

/** One order that many blanks are held against. Any thread may ask. */
public final class OrderTrial {
  private final Order order;
  private final PlanForecaster forecaster;
  private final Grader grader;

  /**
   * @param order without problems (OrderCheck)
   */
  public OrderTrial(Order order, Sureness sureness) {
    this.order = order;
    this.forecaster = Grader.forecaster(order);
    this.grader = new Grader(sureness);
  }

  public Order order() {
    return order;
  }

  /** Whether blanks of a species are asked for; every one is where the order names none. */
  public boolean takes(String species) {
    return order.species() == null || order.species().equalsIgnoreCase(species);
  }

  /** Everything about one blank but its first bending frequency. */
  public Standing standing(Candidate candidate) {
    if (!candidate.isTested()) {
      return new Standing(candidate, null, new Obstacle.NoRun());
    }
    Forecast forecast = forecaster.withoutFrequency(candidate.wood());
    return new Standing(
        candidate,
        grader.grade(order, forecast),
        forecast.fits() ? null : new Obstacle.DoesNotFit(forecast.cut()));
  }

  /**
   * The most that the chance of a blank can be, at little cost: whether it fits, and how what is
   * asked hangs together, are left out of it.
   */
  double mostChance(Candidate candidate) {
    if (!candidate.isTested()) {
      return 0;
    }
    return candidate.wood().modulusMPa().variesAlong()
        ? 1
        : Grader.leastChance(order, forecaster.stiffnesses(candidate.wood()));
  }

  /** The chance that all that is asked lies within its tolerance; 0 where it cannot serve. */
  double chance(Candidate candidate) {
    if (!candidate.isTested()) {
      return 0;
    }
    Cut cut = forecaster.cutOf(candidate.wood());
    if (!cut.fits()) {
      return 0;
    }
    return Grader.chanceOfAll(order, forecaster.stiffnesses(candidate.wood(), cut));
  }
}
