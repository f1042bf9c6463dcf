package sagwright.screen.rack;

import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import sagwright.quantity.Figures;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.WoodWords;
import sagwright.screen.theme.Form;
import sagwright.wood.Grain;

/** How a blank looks, and why it is written down anew. */
final class LooksFields {
  private static final List<String> RUN_OUTS =
      List.of("", "straight", "slight run-out", "runs out");
  private static final List<String> REASONS =
      List.of("", "turned", "weighed", "measured again", "misread before");

  private final ShopUnits units;
  private final Form form;
  private final JTextField lines;
  private final JComboBox<String> runOut;
  private final JTextField looks;
  private final JComboBox<String> why;

  LooksFields(ShopUnits units, Runnable changed) {
    this.units = units;
    form = new Form("blank", changed);
    lines = form.field("grain lines", WoodWords.per(units));
    runOut = form.choice("run-out", RUN_OUTS, false);
    looks = form.field("looks", "");
    why = form.choice("why anew", REASONS, true);
  }

  Form form() {
    return form;
  }

  /** Empties them for a new blank. */
  void begin() {
    begin(Grain.UNSEEN);
    why.setSelectedItem("");
    why.setEnabled(false);
  }

  /** Starts from how a blank was seen to look. */
  void begin(Grain grain) {
    Double shown = WoodWords.lines(grain, units);
    lines.setText(shown == null ? "" : Figures.asTyped(shown));
    runOut.setSelectedItem(grain.runOut() == null ? "" : grain.runOut().inWords());
    looks.setText(grain.looks() == null ? "" : grain.looks());
    why.setEnabled(true);
  }

  String why() {
    return Form.chosen(why);
  }

  Grain grain() throws ComplaintException {
    Double counted =
        lines.getText().isBlank() ? null : Typed.number("grain lines", lines.getText());
    if (counted != null && !(counted > 0)) {
      throw new ComplaintException("grain lines: must be above 0, not " + lines.getText());
    }
    int chosenRunOut = runOut.getSelectedIndex();
    return new Grain(
        WoodWords.linesPerCm(counted, units),
        chosenRunOut <= 0 ? null : Grain.RunOut.values()[chosenRunOut - 1],
        looks.getText().isBlank() ? null : looks.getText().trim());
  }
}
