package sagwright.screen.theme;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.accessibility.AccessibleContext;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.LayoutFocusTraversalPolicy;
import net.miginfocom.swing.MigLayout;

/**
 * Named fields one under the other; Enter goes to the next. A field's unit stands behind it; other
 * units may be typed.
 */
public final class Form extends JPanel implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;
  private static final String FIELD = "hmin 44, growx";
  private static final int UNIT_WIDTH = 52;
  private static final int COLUMNS = 8;
  private static final int SMALLER_COLUMNS = 3;

  private final Map<String, JComponent> fields = new HashMap<>();
  private final Map<JTextField, JLabel> behind = new HashMap<>();
  private final transient Runnable changed;
  private final int labelWidth;
  private final int behindWidth;

  /**
   * @param changed a text has changed
   */
  public Form(String name, Runnable changed) {
    this(name, changed, UNIT_WIDTH);
  }

  /**
   * @param behindWidth at least so wide is what stands behind the fields, at zoom 1
   */
  public Form(String name, Runnable changed, int behindWidth) {
    this(name, changed, behindWidth, 0);
  }

  /**
   * @param behindWidth at least so wide is what stands behind the fields, at zoom 1
   * @param labelWidth at least so wide are their names: forms one under the other stand alike
   */
  public Form(String name, Runnable changed, int behindWidth, int labelWidth) {
    super(
        new MigLayout(
            "insets 0 2 0 2, gap 10 4, hidemode 3", columns(labelWidth, behindWidth), ""));
    this.labelWidth = labelWidth;
    this.changed = changed;
    this.behindWidth = behindWidth;
    setName(name);
    setFocusTraversalPolicyProvider(true); // column by column, not row by row across the page
    setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
  }

  private static String columns(double labelWidth, double behindWidth) {
    return String.format(
        Locale.ROOT, "[%.0f::][grow,fill,shrinkprio 200]0[]0[]6[%.0f::]", labelWidth, behindWidth);
  }

  @Override
  public void zoomTo(double zoom) {
    if (getLayout() instanceof MigLayout layout) {
      layout.setColumnConstraints(columns(labelWidth * zoom, behindWidth * zoom));
      revalidate();
    }
  }

  /** A field for text or for a quantity in a unit. */
  public JTextField field(String label, String unit) {
    JTextField field = listened();
    behind.put(field, place(label, field, ", span 3", unit));
    return field;
  }

  /** Two fields in a row. */
  public record Pair(JTextField first, JTextField second) {}

  /**
   * A field, and a smaller one behind it in the same row.
   *
   * @param sign between the two, as ±
   * @param second how the smaller one is called
   */
  public Pair pair(String label, String sign, String second, String unit) {
    JTextField field = listened();
    JTextField smaller = listened();
    smaller.setColumns(SMALLER_COLUMNS);
    label(label, field);
    add(field, FIELD);
    add(Text.second(sign), "gapleft 6, gapright 6");
    name(smaller, second);
    add(smaller, "hmin 44");
    JLabel words = behind(unit);
    add(words);
    behind.put(field, words);
    return new Pair(field, smaller);
  }

  private JLabel behind(String unit) {
    return behindWidth > UNIT_WIDTH ? Text.note(unit) : Text.second(unit);
  }

  /** What stands behind a field: its unit, unless something else is put there. */
  public JLabel behind(JTextField field) {
    return behind.get(field);
  }

  private JTextField listened() {
    JTextField field = new JTextField(COLUMNS);
    field.addActionListener(e -> next(field));
    field.getDocument().addDocumentListener(new OnTyping(changed));
    return field;
  }

  /**
   * A choice; what is not in the list may be typed where {@code open}, and Enter completes what
   * only one of the list begins with.
   */
  public JComboBox<String> choice(String label, List<String> words, boolean open) {
    JComboBox<String> choice = new JComboBox<>(words.toArray(String[]::new));
    choice.setEditable(open);
    label(label, choice);
    boolean isLong = behindWidth > UNIT_WIDTH; // nothing stands behind a choice
    add(choice, FIELD + (isLong ? ", span 4, wmin 60" : ", span 3, wmin 60"));
    choice.addActionListener(e -> changed.run());
    enterGoesOn(choice, choice);
    if (choice.getEditor().getEditorComponent() instanceof JTextField editor) {
      enterGoesOn(editor, choice);
      editor.getDocument().addDocumentListener(new OnTyping(changed));
    }
    return choice;
  }

  /** What is chosen or typed, without blanks around it; empty for nothing. */
  public static String chosen(JComboBox<String> choice) {
    Object chosen = choice.isEditable() ? choice.getEditor().getItem() : choice.getSelectedItem();
    return chosen == null ? "" : chosen.toString().trim();
  }

  /** What is typed, or the one of the list that begins with it. */
  private static Object completed(JComboBox<String> choice) {
    Object typed = choice.getEditor().getItem();
    String begun = typed == null ? "" : typed.toString().strip().toLowerCase(Locale.ROOT);
    List<String> meant = new ArrayList<>();
    for (int i = 0; i < choice.getItemCount(); i++) {
      String item = choice.getItemAt(i);
      if (item.equalsIgnoreCase(begun)) {
        return item;
      }
      if (!begun.isEmpty() && item.toLowerCase(Locale.ROOT).startsWith(begun)) {
        meant.add(item);
      }
    }
    return meant.size() == 1 ? meant.get(0) : typed;
  }

  /** Without this a choice keeps Enter for itself, and the hand must leave the figures for Tab. */
  private static void enterGoesOn(JComponent listening, JComboBox<String> choice) {
    Keys.bind(
        listening,
        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0),
        "goOn",
        () -> {
          if (choice.isEditable()) {
            choice.setSelectedItem(completed(choice));
          }
          choice.setPopupVisible(false);
          next(listening);
        });
  }

  private JLabel place(String label, JComponent field, String span, String unit) {
    label(label, field);
    add(field, FIELD + span);
    JLabel behindIt = behind(unit);
    add(behindIt);
    return behindIt;
  }

  private void label(String label, JComponent field) {
    JLabel words = Text.plain(label);
    words.setLabelFor(field);
    name(field, label);
    add(words, "newline");
  }

  private void name(JComponent field, String label) {
    field.setName(getName() + "." + label);
    field.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, label);
    fields.put(label, field);
  }

  /** Shows or hides a field with all of its row. */
  public void show(JTextField field, boolean isShown) {
    Component[] parts = getComponents();
    int from = Arrays.asList(parts).indexOf(field) - 1;
    int to = Arrays.asList(parts).indexOf(behind.get(field));
    for (int i = from; i <= to; i++) {
      parts[i].setVisible(isShown);
    }
  }

  /** A line of explanation between two fields. */
  public void note(String words) {
    add(Text.note(words), "newline, skip 1, span 4, wmin 0");
  }

  /**
   * Goes to the field that bears a label, its text picked to be typed over.
   *
   * @return whether there is one
   */
  public boolean focusOn(String label) {
    JComponent field = fields.get(label);
    if (field != null) {
      field.requestFocusInWindow();
    }
    if (field instanceof JTextField text) {
      text.selectAll();
    }
    return field != null;
  }

  /** The focus goes to the field after this one. */
  private static void next(JComponent field) {
    field.transferFocus();
  }
}
