package sagwright.screen.orders;

import javax.swing.JLabel;
import javax.swing.JTextField;
import sagwright.quantity.Dimension;
import sagwright.quantity.Figures;
import sagwright.quantity.SideBySide;
import sagwright.quantity.TypedQuantity;
import sagwright.quantity.Unit;
import sagwright.quantity.UnreadableQuantityException;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.OnTyping;

/**
 * A field for one quantity. A length or a mass stands behind it in both systems. What was filled in
 * and not typed over comes out to the last digit as it was.
 */
final class Measure {
  private final String name;
  private final JTextField field;
  private final Unit unit;
  private String filledText = "";
  private Double filled;

  /**
   * @param name how a complaint calls it
   * @param unit of a number without a unit
   */
  Measure(String name, JTextField field, Unit unit) {
    this.name = name;
    this.field = field;
    this.unit = unit;
  }

  /** A field of a form by its label, with both systems behind it. */
  static Measure in(Form form, String label, Unit unit) {
    JTextField field = form.field(label, unit.symbol());
    return new Measure(label, field, unit).toldBy(form.behind(field));
  }

  /** Says behind the field what is typed in both systems. */
  Measure toldBy(JLabel label) {
    if (unit.dimension() == Dimension.LENGTH || unit.dimension() == Dimension.MASS) {
      field
          .getDocument()
          .addDocumentListener(new OnTyping(() -> label.setText(bothSystems(field.getText()))));
    }
    return this;
  }

  /** A figure with its tolerance. */
  record Within(Measure value, Measure tolerance) {
    static Within in(Form form, String label, Unit unit) {
      Form.Pair pair = form.pair(label, "±", label + " ±", unit.symbol());
      return new Within(
          new Measure(label, pair.first(), unit).toldBy(form.behind(pair.first())),
          new Measure(label + " ±", pair.second(), unit));
    }
  }

  private String bothSystems(String typed) {
    try {
      double base = TypedQuantity.parse(typed, unit);
      return unit.dimension() == Dimension.MASS ? SideBySide.mass(base) : SideBySide.length(base);
    } catch (UnreadableQuantityException e) {
      return unit.symbol();
    }
  }

  /**
   * @param base in the base unit of its dimension; null for nothing
   */
  void fill(Double base) {
    filled = base;
    filledText = base == null ? "" : Figures.asTyped(unit.fromBase(base));
    field.setText(filledText);
    field.setCaretPosition(0); // so that its beginning is seen
  }

  String name() {
    return name;
  }

  boolean isEmpty() {
    return field.getText().isBlank();
  }

  /** In the base unit of its dimension. */
  double needed() throws ComplaintException {
    return filled != null && field.getText().equals(filledText)
        ? filled
        : Typed.quantity(name, field.getText(), unit);
  }

  /** The same, null where nothing is typed. */
  Double optional() throws ComplaintException {
    return isEmpty() ? null : Double.valueOf(needed());
  }

  double or(double otherwise) throws ComplaintException {
    return isEmpty() ? otherwise : needed();
  }

  /** What counts where nothing is typed. */
  void usually(String words) {
    field.putClientProperty("JTextField.placeholderText", words);
    field.repaint();
  }

  JTextField field() {
    return field;
  }
}
