package sagwright.screen.orders;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import sagwright.beam.SetUp;
import sagwright.grade.Ask;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Keys;

/**
 * The stiffness asked at one set-up, and how far it may be off. The arrows up and down go through
 * what can be asked by name.
 */
final class AskRow {
  static final double USUAL_TOLERANCE_PERCENT = 5;

  private final String name;
  private final Form form;
  private final JTextField stiffness;
  private final JTextField tolerance;
  private AskWords words = new AskWords(null, List.of());
  private SetUp at;
  private Ask filled;
  private String filledAs = "";
  private String filledText = "";
  private String filledTolerance = "";

  /**
   * @param name as the form and complaints call it
   * @param key that leads to it, shown while it is empty
   */
  AskRow(Form form, String name, String key) {
    this.form = form;
    this.name = name;
    Form.Pair pair = form.pair(name, "±", name + " ±", "N/mm");
    stiffness = pair.first();
    tolerance = pair.second();
    stiffness.putClientProperty("JTextField.placeholderText", key);
    arrow(KeyEvent.VK_UP, -1);
    arrow(KeyEvent.VK_DOWN, 1);
  }

  private void arrow(int keyCode, int step) {
    Keys.bind(
        stiffness,
        KeyStroke.getKeyStroke(keyCode, 0),
        "choice" + step,
        () -> words.next(stiffness.getText(), at, step).ifPresent(stiffness::setText));
  }

  /** Empties the row for a new order. */
  void begin(AskWords with, SetUp setUp) {
    words = with;
    at = setUp;
    fill(null, "");
  }

  /** Where it is asked; what is typed stays. */
  void standAt(SetUp setUp) {
    at = setUp;
  }

  SetUp at() {
    return at;
  }

  /**
   * @param ask null for none
   * @param askedAs how it was put; empty for a figure
   */
  void fill(Ask ask, String askedAs) {
    filled = ask;
    filledAs = askedAs;
    filledText = ask == null ? "" : named(ask, askedAs);
    filledTolerance = ask == null ? "" : Figures.asTyped(ask.tolerancePercent());
    stiffness.setText(filledText);
    stiffness.setCaretPosition(0); // so that its beginning is seen
    tolerance.setText(filledTolerance);
  }

  private static String named(Ask ask, String askedAs) {
    return askedAs.isEmpty() ? Figures.asTyped(ask.stiffnessNPerMm()) : askedAs;
  }

  boolean isEmpty() {
    return stiffness.getText().isBlank();
  }

  String name() {
    return name;
  }

  JTextField field() {
    return stiffness;
  }

  /**
   * What is asked here. A name that was filled in stands for the figure that was kept with it, even
   * if the cue was measured again since.
   */
  Row read() throws ComplaintException {
    boolean isAsFilled =
        filled != null && stiffness.getText().equals(filledText) && filled.setUp().equals(at);
    AskWords.Asked asked = isAsFilled ? asFilled() : words.read(name, stiffness.getText(), at);
    return new Row(Ask.ofStiffness(at, asked.nPerMm().value(), tolerance(asked)), asked);
  }

  /** An ask and what it was asked by. */
  record Row(Ask ask, AskWords.Asked asked) {}

  private AskWords.Asked asFilled() throws ComplaintException {
    String figure = Figures.asTyped(filled.stiffnessNPerMm());
    AskWords.Asked plain = words.read(name, figure, at);
    return filledAs.isEmpty()
        ? plain
        : new AskWords.Asked(
            plain.nPerMm(),
            null,
            filledAs,
            Figures.value(filled.stiffnessNPerMm(), 0) + " " + plain.behind());
  }

  private double tolerance(AskWords.Asked asked) throws ComplaintException {
    if (filled != null && tolerance.getText().equals(filledTolerance)) {
      return filled.tolerancePercent();
    }
    if (!tolerance.getText().isBlank()) {
      return Typed.quantity(name + " ±", tolerance.getText(), Unit.PERCENT);
    }
    return asked.tolerancePercent() == null ? USUAL_TOLERANCE_PERCENT : asked.tolerancePercent();
  }

  /** Shows behind the row what its text means. */
  void explain() {
    String behind = "N/mm";
    double usual = USUAL_TOLERANCE_PERCENT;
    try {
      if (!isEmpty()) {
        AskWords.Asked asked = read().asked();
        behind = asked.behind();
        usual = asked.tolerancePercent() == null ? usual : asked.tolerancePercent();
      }
    } catch (ComplaintException e) {
      behind = "?";
    }
    form.behind(stiffness).setText(behind);
    tolerance.putClientProperty(
        "JTextField.placeholderText",
        Figures.rounded(usual, usual == Math.rint(usual) ? 0 : 1) + " %");
  }
}
