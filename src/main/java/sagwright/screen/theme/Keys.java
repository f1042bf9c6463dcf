package sagwright.screen.theme;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Binds keys of a component to what they do. */
public final class Keys {
  private Keys() {}

  /** A key that does something while the component itself has the focus. */
  public static void bind(JComponent on, KeyStroke stroke, String name, Runnable run) {
    bind(on, JComponent.WHEN_FOCUSED, stroke, name, run);
  }

  /**
   * @param condition when the key is heard, as {@link JComponent#WHEN_IN_FOCUSED_WINDOW}
   * @param name of the action: one bound before under it is replaced
   */
  public static void bind(
      JComponent on, int condition, KeyStroke stroke, String name, Runnable run) {
    on.getInputMap(condition).put(stroke, name);
    on.getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent e) {
                run.run();
              }
            });
  }
}
