package sagwright.screen;

import sagwright.quantity.Dimension;
import sagwright.quantity.Unit;

/** The units that a shop reads lengths and masses in; any other may be typed. */
public record ShopUnits(Unit length, Unit mass) {
  public static final ShopUnits METRIC = new ShopUnits(Unit.MILLIMETRE, Unit.GRAM);

  public ShopUnits {
    if (length.dimension() != Dimension.LENGTH || mass.dimension() != Dimension.MASS) {
      throw new IllegalArgumentException("a unit of length and one of mass");
    }
  }

  /** A length for people. */
  public String lengthText(double mm) {
    return length.text(mm, length == Unit.MILLIMETRE ? 0 : 2);
  }

  /** A mass for people. */
  public String massText(double g) {
    return mass.text(g, mass == Unit.GRAM ? 0 : 2);
  }
}
