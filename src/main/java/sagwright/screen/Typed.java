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

  /** The same, null where nothing is typed. */
  public static Double optional(String field, String text, Unit bareUnit)
      throws ComplaintException {
    return text.isBlank() ? null : quantity(field, text, bareUnit);
  }
}
