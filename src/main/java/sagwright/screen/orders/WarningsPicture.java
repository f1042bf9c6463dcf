package sagwright.screen.orders;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** What the maker should look at twice; nothing of it stops an order. */
final class WarningsPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double LINE = 18;

  private transient List<String> warnings = List.of();

  WarningsPicture() {
    super("order.warnings", new Dimension(160, (int) (4 * LINE)));
  }

  void show(List<String> next) {
    warnings = List.copyOf(next);
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Palette p = Theme.style().palette();
    Font regular = Theme.style().lettering().regular(14);
    double y = 14;
    int room = (int) (area.getHeight() / LINE);
    for (int i = 0; i < warnings.size(); i++) {
      List<String> lines = TextLine.wrapped(g, warnings.get(i), regular, area.getWidth() - 14);
      boolean isLast = i == warnings.size() - 1;
      if (lines.size() + (isLast ? 0 : 1) > room) {
        String more = "and " + (warnings.size() - i) + " more to look at twice";
        TextLine.of(more, regular, p.secondInk()).fromLeft(g, 14, y);
        return;
      }
      TextLine.of("!", Theme.style().lettering().bold(14), p.brassText()).fromLeft(g, 2, y);
      for (String line : lines) {
        TextLine.of(line, regular, p.ink()).fromLeft(g, 14, y);
        y += LINE;
      }
      room -= lines.size();
    }
  }

  @Override
  protected String describe() {
    return warnings.isEmpty() ? "nothing to look at twice" : String.join("; ", warnings);
  }
}
