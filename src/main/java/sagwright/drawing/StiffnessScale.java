package sagwright.drawing;

import java.util.List;
import sagwright.grade.Ask;

/**
 * The stretch of stiffness that a line shows, and where it lies on the picture.
 *
 * @param fromNPerMm at {@code leftPx}
 * @param toNPerMm at {@code rightPx}
 */
public record StiffnessScale(double fromNPerMm, double toNPerMm, double leftPx, double rightPx) {
  private static final double BANDS_EACH_SIDE = 1.2;
  private static final double LEAST_TICK_PX = 46;

  /** A stretch that shows the ask (null for none) with room around it, and every mark whole. */
  public static StiffnessScale around(
      Ask ask, List<StiffnessMark> marks, double leftPx, double rightPx) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    if (ask != null) {
      double width = ask.highestNPerMm() - ask.lowestNPerMm();
      double room = Math.max(BANDS_EACH_SIDE * width, 0.02 * ask.stiffnessNPerMm());
      from = ask.lowestNPerMm() - room;
      to = ask.highestNPerMm() + room;
    }
    for (StiffnessMark mark : marks) {
      double room = 0.6 * mark.halfWidth95NPerMm() + 0.02 * mark.stiffnessNPerMm();
      from = Math.min(from, mark.stiffnessNPerMm() - mark.halfWidth95NPerMm() - room);
      to = Math.max(to, mark.stiffnessNPerMm() + mark.halfWidth95NPerMm() + room);
    }
    if (!(to > from)) {
      from = 1;
      to = 3;
    }
    return new StiffnessScale(Math.max(0, from), to, leftPx, rightPx);
  }

  double px(double nPerMm) {
    double x = leftPx + (nPerMm - fromNPerMm) * (rightPx - leftPx) / (toNPerMm - fromNPerMm);
    return Math.max(leftPx - 1e4, Math.min(rightPx + 1e4, x));
  }

  /** The same, kept on the picture. */
  double pxWithin(double nPerMm) {
    return Math.max(leftPx, Math.min(rightPx, px(nPerMm)));
  }

  double step() {
    double perPx = (toNPerMm - fromNPerMm) / (rightPx - leftPx);
    return Ticks.step(LEAST_TICK_PX * perPx);
  }
}
