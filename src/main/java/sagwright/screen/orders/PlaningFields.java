package sagwright.screen.orders;

import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.finish.FinishPlan;
import sagwright.grade.Order;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.theme.Form;

/** Where on the blank the shaft is cut, and how near to its taper it is planed. */
final class PlaningFields extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Form form;
  private final transient Measure cut;
  private final transient Measure planedWithin;

  PlaningFields(Runnable changed) {
    super(new MigLayout("insets 0", "[grow,fill]", ""));
    form = new Form("planing", changed, OrderForm.BOTH_SYSTEMS_WIDTH, SetUpFields.LABEL_WIDTH);
    cut = Measure.in(form, "cut from", Unit.MILLIMETRE);
    cut.usually("where it fits best");
    planedWithin = Measure.in(form, "planed ±", Unit.MILLIMETRE);
    planedWithin.usually(Figures.asTyped(FinishPlan.ASSUMED_DIAMETER_UNCERTAINTY_MM));
    add(form);
  }

  /**
   * @param order null for a new one
   */
  void begin(Order order) {
    cut.fill(order == null ? null : order.finish().cutFromMm());
    planedWithin.fill(order == null ? null : order.finish().diameterUncertaintyMm());
  }

  /** Goes to the field that a complaint is about; whether it is here. */
  boolean focusOn(String field) {
    return form.focusOn(field);
  }

  /** From the blank's tip end; null to have it found. */
  Double cutFromMm() throws ComplaintException {
    return cut.optional();
  }

  /** Standard uncertainty of the planing. */
  double diameterUncertaintyMm() throws ComplaintException {
    return planedWithin.or(FinishPlan.ASSUMED_DIAMETER_UNCERTAINTY_MM);
  }
}
