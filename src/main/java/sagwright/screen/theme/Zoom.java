package sagwright.screen.theme;

import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import javax.swing.JComponent;
import javax.swing.JTable;

/**
 * Everything grows with the window: 1 at 1280 × 800. Fonts and row heights are those of zoom 1,
 * remembered with each component; painted components are told by {@link Zoomed}.
 */
public final class Zoom {
  /** Width of the window that everything was drawn for. */
  public static final int WIDTH = 1280;

  /** Height of the window that everything was drawn for. */
  public static final int HEIGHT = 800;

  private static final double LEAST = 0.9;
  private static final double GREATEST = 3;
  private static final String BASE_FONT = "sagwright.baseFont";
  private static final String BASE_ROW_HEIGHT = "sagwright.baseRowHeight";

  /** A component that paints or sizes itself by the zoom. */
  public interface Zoomed {
    void zoomTo(double zoom);
  }

  private Zoom() {}

  public static double of(int width, int height) {
    double fits = Math.min(width / (double) WIDTH, height / (double) HEIGHT);
    return Math.max(LEAST, Math.min(GREATEST, fits));
  }

  /** Brings a component and all that is in it to a zoom. */
  public static void apply(Component root, double zoom) {
    remember(root); // first, for a parent's font may pass to its children
    scale(root, zoom);
  }

  private static void remember(Component root) {
    if (root instanceof JComponent component
        && component.getFont() != null
        && !(component.getClientProperty(BASE_FONT) instanceof Font)) {
      component.putClientProperty(BASE_FONT, component.getFont());
    }
    if (root instanceof Container container) {
      for (Component child : container.getComponents()) {
        remember(child);
      }
    }
  }

  private static void scale(Component root, double zoom) {
    if (root instanceof JComponent component) {
      font(component, zoom);
      if (component instanceof JTable table) {
        rows(table, zoom);
      }
    }
    if (root instanceof Zoomed zoomed) {
      zoomed.zoomTo(zoom);
    }
    if (root instanceof Container container) {
      for (Component child : container.getComponents()) {
        scale(child, zoom);
      }
    }
  }

  private static void font(JComponent component, double zoom) {
    if (!(component.getClientProperty(BASE_FONT) instanceof Font base)) {
      return;
    }
    float size = (float) (base.getSize2D() * zoom);
    if (component.getFont() == null || component.getFont().getSize2D() != size) {
      component.setFont(base.deriveFont(size));
    }
  }

  private static void rows(JTable table, double zoom) {
    if (!(table.getClientProperty(BASE_ROW_HEIGHT) instanceof Integer)) {
      table.putClientProperty(BASE_ROW_HEIGHT, table.getRowHeight());
    }
    int base = (Integer) table.getClientProperty(BASE_ROW_HEIGHT);
    table.setRowHeight((int) Math.round(base * zoom));
  }
}
