package sagwright.screen.checks;

import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.job.Signature;
import sagwright.screen.ComplaintException;
import sagwright.screen.theme.Text;

/** Who stands for a calibration and how long it is to hold. */
final class SignFields extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JTextField initials;
  private final JTextField days;

  SignFields(String name) {
    super(new MigLayout("insets 0, gap 8 0", "[]8[]18[]8[]8[]"));
    initials = Fields.named(name + ".initials", "initials", 5);
    days = Fields.named(name + ".days", "days that it holds", 5);
    days.setText(String.valueOf(Signature.USUAL_VALID_DAYS));
    add(Text.plain("signed by"));
    add(initials, "hmin 44");
    add(Text.plain("holds for"));
    add(days, "hmin 44");
    add(Text.second("days"));
  }

  /** Whose hand is at work, offered where nobody has signed here yet. */
  void offer(String whose) {
    if (initials.getText().isEmpty() && !initials.isFocusOwner()) {
      initials.setText(whose);
    }
  }

  /** Goes to the field that a complaint is about. */
  void focusOn(String field) {
    if (field.equals("initials")) {
      initials.requestFocusInWindow();
    } else if (field.equals("holds for")) {
      days.requestFocusInWindow();
    }
  }

  Signature read() throws ComplaintException {
    return Numbers.signature(initials.getText(), days.getText());
  }
}
