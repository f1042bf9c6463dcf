package sagwright.modulus;

import java.util.function.ToDoubleFunction;
import sagwright.beam.SetUp;
import sagwright.uncertainty.Contribution;

/**
 * How an answer changes with each of the four positions, per mm, by central differences. Where load
 * and gauge stand at one place the shear part has a kink there, and this is the mean of both sides.
 */
public record PositionSensitivity(double supportA, double supportB, double load, double gauge) {
  /** Errors go with the square of this over the span's: 1e-10 on a metre. */
  private static final double STEP_MM = 0.01;

  /** Of an answer that is smooth in the positions but for that kink. */
  public static PositionSensitivity of(SetUp setUp, ToDoubleFunction<SetUp> answer) {
    double clearance =
        Math.min(
            Math.min(setUp.loadMm(), setUp.gaugeMm()) - setUp.supportAMm(),
            setUp.supportBMm() - Math.max(setUp.loadMm(), setUp.gaugeMm()));
    double step = Math.min(STEP_MM, clearance / 4);
    return new PositionSensitivity(
        slope(answer, setUp, step, 0),
        slope(answer, setUp, step, 1),
        slope(answer, setUp, step, 2),
        slope(answer, setUp, step, 3));
  }

  /** What one of the positions adds to the answer's uncertainty. */
  Contribution contribution(String source, double positionUncertaintyMm) {
    double perMm =
        switch (source) {
          case BudgetSource.SUPPORT_A -> supportA;
          case BudgetSource.SUPPORT_B -> supportB;
          case BudgetSource.LOAD -> load;
          case BudgetSource.GAUGE -> gauge;
          default -> throw new IllegalArgumentException(source + " is no position");
        };
    return new Contribution(source, Math.abs(perMm) * positionUncertaintyMm);
  }

  private static double slope(
      ToDoubleFunction<SetUp> answer, SetUp setUp, double step, int position) {
    return (answer.applyAsDouble(moved(setUp, position, step))
            - answer.applyAsDouble(moved(setUp, position, -step)))
        / (2 * step);
  }

  private static SetUp moved(SetUp s, int position, double by) {
    return new SetUp(
        s.supportAMm() + (position == 0 ? by : 0),
        s.supportBMm() + (position == 1 ? by : 0),
        s.loadMm() + (position == 2 ? by : 0),
        s.gaugeMm() + (position == 3 ? by : 0),
        s.turnDegrees());
  }
}
