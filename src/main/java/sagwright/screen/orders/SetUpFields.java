package sagwright.screen.orders;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.SetUp;
import sagwright.grade.AskPlaces;
import sagwright.screen.ComplaintException;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Text;

/**
 * Where the stiffness is asked, for an order that wants it elsewhere than the shop usually does.
 */
final class SetUpFields extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Room for the longest name of a place. */
  static final int LABEL_WIDTH = 90;

  private final Form form;
  private final JTextField front;
  private final JTextField middle;
  private final JTextField butt;
  private final List<JTextField> elsewhere = new ArrayList<>();

  /** Set-ups as they were filled in, to come out with all their figures. */
  private final transient List<SetUp> filled = new ArrayList<>();

  SetUpFields(Runnable changed) {
    super(new MigLayout("insets 0, gap 0 4, wrap", "[grow,fill]", ""));
    form = new Form("setup", changed, 0, LABEL_WIDTH);
    front = form.field("front", "");
    middle = form.field("middle", "");
    butt = form.field("butt", "");
    add(Text.note("supports, load and gauge, in mm from the tip"));
    add(form);
  }

  /** At least so many places elsewhere. */
  void require(int count) {
    while (elsewhere.size() < count) {
      elsewhere.add(form.field(nameOf(elsewhere.size()), ""));
      filled.add(null);
    }
  }

  private static String nameOf(int place) {
    return place == 0 ? "elsewhere" : "elsewhere " + (place + 1);
  }

  void begin(AskPlaces usual) {
    for (JTextField field : List.of(front, middle, butt)) {
      field.setText("");
    }
    for (int i = 0; i < elsewhere.size(); i++) {
      filled.set(i, null);
      elsewhere.get(i).setText("");
    }
    showUsual(usual.all());
  }

  void focusFirst() {
    front.requestFocusInWindow();
  }

  /** Goes to the field that a complaint is about, as "front set-up"; whether it is here. */
  boolean focusOn(String field) {
    return field.contains("set-up") && form.focusOn(field.replace("set-up", "").strip());
  }

  /** What counts where nothing is typed: front, middle, butt. */
  void showUsual(List<SetUp> usual) {
    List<JTextField> fields = List.of(front, middle, butt);
    for (int i = 0; i < fields.size(); i++) {
      fields.get(i).putClientProperty("JTextField.placeholderText", SetUpText.write(usual.get(i)));
      fields.get(i).repaint();
    }
  }

  void fillElsewhere(int place, SetUp setUp) {
    filled.set(place, setUp);
    elsewhere.get(place).setText(SetUpText.write(setUp));
  }

  /** Null for the usual place; so the next two. */
  SetUp front() throws ComplaintException {
    return read("front set-up", front);
  }

  SetUp middle() throws ComplaintException {
    return read("middle set-up", middle);
  }

  SetUp butt() throws ComplaintException {
    return read("butt set-up", butt);
  }

  /** Null for none. */
  SetUp elsewhere(int place) throws ComplaintException {
    SetUp before = filled.get(place);
    String typed = elsewhere.get(place).getText();
    return before != null && typed.equals(SetUpText.write(before))
        ? before
        : read(nameOf(place) + " set-up", elsewhere.get(place));
  }

  private static SetUp read(String name, JTextField field) throws ComplaintException {
    return field.getText().isBlank() ? null : SetUpText.read(name, field.getText());
  }
}
