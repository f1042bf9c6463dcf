package sagwright.screen;

import sagwright.quantity.TypedQuantity;
import sagwright.quantity.Unit;
import sagwright.quantity.UnreadableQuantityException;

/** What stands in a form's fields, as quantities; a complaint names the field. */
public final class Typed {
  private Typed() {}

  /**
   * A quantity that must be there, in the base unit of its dimension.
   *
   * @param field how the form calls it
   * @param bareUnit of a number without a unit
   */
  public static double quantity(String field, String text, Unit bareUnit)
      throws ComplaintException {
    try {
      return TypedQuantity.parse(text, bareUnit);
    } catch (UnreadableQuantityException e) {
      throw new ComplaintException(field + ": " + e.getMessage());
    }
  }

  /** A bare number that must be there; a comma does for its point. */
  public static double number(String field, String text) throws ComplaintException {
    try {
      double number = Double.parseDouble(text.trim().replace(',', '.'));
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new ComplaintException(field + ": " + text + " is not a number");
  }

  /** The same as a quantity, null where nothing is typed. */
  public static Double optional(String field, String text, Unit bareUnit)
      throws ComplaintException {
    return text.isBlank() ? null : quantity(field, text, bareUnit);
  }
}
