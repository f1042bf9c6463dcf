package sagwright.screen.rack;

import java.util.List;
import sagwright.job.KeepSplice;
import sagwright.quantity.Unit;
import sagwright.screen.AskStrip;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;

/** A splice as it is typed: points, core, and a wood of the table or its density and modulus. */
final class SpliceText {
  /** A density in kg/m³ and a modulus in MPa. */
  private static final String FIGURES = "[0-9.,]+\\s+[0-9.,]+";

  private static final int WOOD_COLUMNS = 13;

  private SpliceText() {}

  /** What is asked, field by field. */
  static List<AskStrip.Asked> asked(ShopUnits units) {
    return List.of(
        new AskStrip.Asked("points from butt, " + units.length().symbol(), ""),
        new AskStrip.Asked("half core, mm", ""),
        new AskStrip.Asked("wood, or kg/m³ MPa", "", WOOD_COLUMNS));
  }

  /**
   * @param typed a text for each of them
   */
  static KeepSplice.Measured read(List<String> typed, ShopUnits units) throws ComplaintException {
    double fromButtMm = Typed.quantity("points", typed.get(0), units.length());
    double coreHalfMm = Typed.quantity("half core", typed.get(1), Unit.MILLIMETRE);
    String wood = typed.get(2).strip();
    if (!wood.matches(FIGURES)) {
      return new KeepSplice.Measured(fromButtMm, coreHalfMm, wood, null, null);
    }
    String[] figures = wood.split("\\s+");
    return new KeepSplice.Measured(
        fromButtMm,
        coreHalfMm,
        null,
        Typed.quantity("density", figures[0], Unit.KILOGRAM_PER_CUBIC_METRE),
        Typed.quantity("modulus", figures[1], Unit.MEGAPASCAL));
  }
}
