package sagwright.screen.checks;

import javax.accessibility.AccessibleContext;
import javax.swing.JTextField;
import javax.swing.SwingConstants;

/** Text fields for figures; Enter goes on to the next. */
final class Fields {
  private Fields() {}

  static JTextField named(String name, String says, int columns) {
    JTextField field = new JTextField(columns);
    field.setName(name);
    field.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, says);
    field.putClientProperty("JTextField.selectAllOnFocusPolicy", "always");
    field.addActionListener(e -> field.transferFocus());
    return field;
  }

  static JTextField figures(String name, String says, int columns) {
    JTextField field = named(name, says, columns);
    field.setHorizontalAlignment(SwingConstants.TRAILING);
    return field;
  }
}
