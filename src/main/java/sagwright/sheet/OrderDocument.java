package sagwright.sheet;

import sagwright.grade.Order;

/**
 * An order with the text that it was read from.
 *
 * @param json the whole document as it came, on one line, keys that begin with x- included
 */
public record OrderDocument(Order order, String json) implements Document {
  /** This order, where it may enter a workshop: with a number of the right kind. */
  public OrderDocument requireNumber() throws BadDocumentException {
    if (order.number() == null) {
      throw new BadDocumentException("order", "is missing");
    }
    Names.require("order", order.number());
    return this;
  }
}
