package sagwright.screen.theme;

import java.awt.Component;
import java.awt.event.KeyEvent;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;

/** What is too long for its place. */
public final class Lists {
  /** Half a row of a list. */
  private static final int STEP = 22;

  private Lists() {}

  /** Scrolled up and down, without a frame; Page Down and Page Up stay with the page around it. */
  public static JScrollPane scrolled(Component list) {
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(STEP);
    InputMap keys = scroll.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, 0), "none");
    keys.put(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, 0), "none");
    return scroll;
  }
}
