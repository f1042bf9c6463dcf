package sagwright;

import java.awt.Component;
import java.awt.Container;
import org.assertj.swing.edt.GuiActionRunner;

/** The parts of a window that are seen now, by their names. Any thread but the event thread. */
final class ShowingParts {
  private final Container window;

  ShowingParts(Container window) {
    this.window = window;
  }

  /** What a part says of itself to whoever does not see it; empty where it is not seen. */
  String said(String name) {
    return GuiActionRunner.execute(
        () -> {
          Component part = find(window, name);
          String said =
              part == null ? null : part.getAccessibleContext().getAccessibleDescription();
          return said == null ? "" : said;
        });
  }

  boolean hasFocus(String name) {
    return GuiActionRunner.execute(
        () -> {
          Component part = find(window, name);
          return part != null && part.isFocusOwner();
        });
  }

  private static Component find(Container root, String name) {
    for (Component child : root.getComponents()) {
      if (name.equals(child.getName()) && child.isShowing()) {
        return child;
      }
      Component found = child instanceof Container inner ? find(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
