package sagwright.screen.theme;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JTextField;

/** A field whose text counts when Enter is pressed and when it is left: nothing typed is lost. */
public final class Leaving {
  private Leaving() {}

  /**
   * @param keep called by Enter, and where the field is left with another text than it was entered
   */
  public static void keeps(JTextField field, Runnable keep) {
    String[] before = {field.getText()};
    field.addActionListener(
        e -> {
          before[0] = field.getText();
          keep.run();
        });
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            before[0] = field.getText();
          }

          @Override
          public void focusLost(FocusEvent e) {
            if (!e.isTemporary() && !field.getText().equals(before[0])) {
              keep.run();
            }
          }
        });
  }
}
