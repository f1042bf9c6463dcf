package sagwright.check;

import java.util.List;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * What the gauge's stem pushes back with, from pushes onto a balance: the slope of force on travel.
 *
 * @param springNPerMm 0 or above
 */
public record GaugeSpring(double springNPerMm) {
  /**
   * The stem pushed in onto a balance.
   *
   * @param travelMm by the gauge itself
   * @param balanceG what the balance shows
   */
  public record Push(double travelMm, double balanceG) {}

  /**
   * @param pushes two or more, at unlike travels
   */
  public static GaugeSpring of(List<Push> pushes, LocalGravity gravity) throws PoorPointsException {
    if (pushes.stream().mapToDouble(Push::travelMm).distinct().count() < 2) {
      throw new PoorPointsException("the stem wants to be pushed to two travels at least");
    }
    SimpleRegression forceOnTravel = new SimpleRegression();
    for (Push push : pushes) {
      forceOnTravel.addData(push.travelMm(), gravity.loadN(push.balanceG()));
    }
    if (forceOnTravel.getSlope() < 0) {
      throw new PoorPointsException("the stem pushes less the farther it goes in: no spring does");
    }
    return new GaugeSpring(forceOnTravel.getSlope());
  }
}
