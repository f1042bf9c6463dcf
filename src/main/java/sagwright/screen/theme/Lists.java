package sagwright.screen.theme;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;

/** What is too long for its place. */
public final class Lists {
  /** Half a row of a list. */
  private static final int STEP = 22;

  private Lists() {}

  /** Scrolled up and down, without a frame. */
  public static JScrollPane scrolled(Component list) {
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    scroll.getVerticalScrollBar().setUnitIncrement(STEP);
    return scroll;
  }
}
