package sagwright.screen.orders;

import sagwright.beam.SetUp;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;

/** A set-up in one field: supports, load and gauge in mm from the tip, "100, 1100, 600, 600". */
final class SetUpText {
  private SetUpText() {}

  static String write(SetUp s) {
    return String.join(
        ", ",
        Figures.asTyped(s.supportAMm()),
        Figures.asTyped(s.supportBMm()),
        Figures.asTyped(s.loadMm()),
        Figures.asTyped(s.gaugeMm()));
  }

  /**
   * Without a fourth place the gauge stands under the load.
   *
   * @param name how a complaint calls the field
   */
  static SetUp read(String name, String typed) throws ComplaintException {
    String[] parts = typed.trim().split("[,;\\s]+");
    if (parts.length != 3 && parts.length != 4) {
      throw new ComplaintException(name + ": supports, load and gauge, as 100, 1100, 600, 600");
    }
    double[] mm = new double[4];
    for (int i = 0; i < 4; i++) {
      mm[i] = Typed.quantity(name, parts[Math.min(i, parts.length - 1)], Unit.MILLIMETRE);
    }
    try {
      return new SetUp(mm[0], mm[1], mm[2], mm[3], 0);
    } catch (IllegalArgumentException e) {
      throw new ComplaintException(name + ": " + e.getMessage());
    }
  }
}
