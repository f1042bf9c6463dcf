package sagwright.screen;

import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.theme.Text;

/**
 * A line or two to be typed in the foot's place: what is asked above, its fields below. Enter in
 * the last field takes what is typed, in another goes on; Esc leaves things as they are.
 */
public final class AskStrip extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int FIGURE_COLUMNS = 5;

  private final List<JTextField> fields = new ArrayList<>();
  private final transient Consumer<List<String>> take;

  /**
   * A field.
   *
   * @param label shown before it
   * @param text that stands in it at first
   * @param columns as wide as so many letters, where it does not stand alone
   */
  public record Asked(String label, String text, int columns) {
    /** A field for a figure. */
    public Asked(String label, String text) {
      this(label, text, FIGURE_COLUMNS);
    }
  }

  /**
   * @param words what is asked
   * @param take hears what is typed, a text for each field
   * @param leave Esc was pressed
   */
  public AskStrip(
      String name, String words, List<Asked> asked, Consumer<List<String>> take, Runnable leave) {
    super(new MigLayout("insets 2 0 0 0, gap 8 2", "", "[][44!]"));
    this.take = take;
    setName(name);
    JPanel head = new JPanel(new MigLayout("insets 0, gap 16 0"));
    head.add(Text.strong(words));
    head.add(Text.note("Enter keeps it, Esc leaves it"));
    add(head, "span, wrap");
    for (Asked each : asked) {
      if (!each.label().isEmpty()) {
        add(Text.plain(each.label()));
      }
      JTextField field = new JTextField(each.text(), asked.size() == 1 ? 40 : each.columns());
      field.setName(name + "." + (fields.size() + 1));
      field.putClientProperty(
          AccessibleContext.ACCESSIBLE_NAME_PROPERTY,
          each.label().isEmpty() ? words : each.label());
      field.putClientProperty("JTextField.selectAllOnFocusPolicy", "always");
      field.registerKeyboardAction(
          e -> leave.run(), KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), WHEN_FOCUSED);
      field.addActionListener(e -> entered(field));
      fields.add(field);
      add(field, asked.size() == 1 ? "growx, pushx, hmin 44" : "hmin 44, gapright 12");
    }
  }

  private void entered(JTextField field) {
    int next = fields.indexOf(field) + 1;
    if (next < fields.size()) {
      fields.get(next).requestFocusInWindow();
    } else {
      take.accept(fields.stream().map(f -> f.getText().trim()).toList());
    }
  }

  public void focusFirst() {
    fields.get(0).requestFocusInWindow();
  }
}
