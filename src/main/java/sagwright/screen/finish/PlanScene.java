package sagwright.screen.finish;

import sagwright.drawing.FinishDrawing;
import sagwright.finish.Cut;
import sagwright.job.PlannedFinish;

/** A finish plan in the blank that it is cut from, for the long drawing. */
public final class PlanScene {
  private PlanScene() {}

  /** Without a blank the order's own taper alone. */
  public static FinishDrawing.Scene of(PlannedFinish planned) {
    if (planned.graded() == null) {
      return FinishDrawing.Scene.of(planned.order().finish());
    }
    Cut cut = planned.graded().forecast().cut();
    Double balance = planned.graded().forecast().balanceFromButtMm();
    return new FinishDrawing.Scene(
        planned.blank().taper(),
        planned.order().finish(),
        cut.fromMm(),
        balance == null ? Double.NaN : balance,
        new FinishDrawing.LeastSpare(cut.leastSpareMm(), cut.leastSpareAtMm()));
  }
}
