package sagwright.screen.theme;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractAction;
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
public final class Form extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final String FIELD = "hmin 44, growx";

  private final Map<String, JComponent> fields = new LinkedHashMap<>();
  private final transient Runnable changed;

  /**
   * @param changed a text has changed
   */
  public Form(String name, Runnable changed) {
    super(new MigLayout("insets 0 2 0 2, gap 10 4", "[][grow,fill]6[52::]", ""));
    this.changed = changed;
    setName(name);
    setFocusTraversalPolicyProvider(true); // column by column, not row by row across the page
    setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
  }

  /** A field for text or for a quantity in a unit. */
  public JTextField field(String label, String unit) {
    JTextField field = new JTextField(8);
    place(label, field, unit);
    field.addActionListener(e -> next(field));
    field.getDocument().addDocumentListener(new OnTyping(changed));
    return field;
  }

  /** A choice; what is not in the list may be typed where {@code open}. */
  public JComboBox<String> choice(String label, List<String> words, boolean open) {
    JComboBox<String> choice = new JComboBox<>(words.toArray(String[]::new));
    choice.setEditable(open);
    place(label, choice, "");
    choice.addActionListener(e -> changed.run());
    enterGoesOn(choice, choice);
    if (choice.getEditor().getEditorComponent() instanceof JComponent editor) {
      enterGoesOn(editor, choice);
    }
    return choice;
  }

  /** Without this a choice keeps Enter for itself, and the hand must leave the figures for Tab. */
  private static void enterGoesOn(JComponent listening, JComboBox<String> choice) {
    listening.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "goOn");
    listening
        .getActionMap()
        .put(
            "goOn",
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent e) {
                if (choice.isEditable()) {
                  choice.setSelectedItem(choice.getEditor().getItem());
                }
                choice.setPopupVisible(false);
                next(listening);
              }
            });
  }

  private void place(String label, JComponent field, String unit) {
    JLabel words = Text.plain(label);
    words.setLabelFor(field);
    field.setName(getName() + "." + label);
    field.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, label);
    fields.put(label, field);
    add(words, "newline");
    add(field, FIELD);
    add(Text.second(unit));
  }

  /** A line of explanation between two fields. */
  public void note(String words) {
    add(Text.note(words), "newline, skip 1, span 2, wmin 0");
  }

  /** Goes to the field that bears a label, its text picked to be typed over. */
  public void focusOn(String label) {
    JComponent field = fields.get(label);
    if (field != null) {
      field.requestFocusInWindow();
    }
    if (field instanceof JTextField text) {
      text.selectAll();
    }
  }

  /** The focus goes to the field after this one. */
  private static void next(JComponent field) {
    field.transferFocus();
  }
}
