package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** How the line to the head does: each figure with what it means. */
final class HealthPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double ROW = 29;
  private static final double NAME = 150;

  private final boolean isWhole;
  private transient List<HealthWords.Row> rows = List.of();
  private String heading = "";

  /**
   * @param isWhole whether what each figure means is shown too
   */
  HealthPicture(String name, boolean isWhole) {
    super(name, new Dimension(360, 250));
    this.isWhole = isWhole;
  }

  void show(ChecksView.Health health) {
    rows = HealthWords.rows(health);
    heading = HealthWords.heading(health);
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    double y =
        4 + new Paragraph(l.semiBold(20), p.ink(), 26).draw(g, heading, 0, 24, area.getWidth());
    for (HealthWords.Row row : rows) {
      TextLine.of(row.name(), l.regular(16), p.secondInk()).fromLeft(g, 0, y);
      TextLine.of(row.figure(), row.isAmiss() ? l.bold(16) : l.regular(16), p.ink())
          .fromLeft(g, NAME, y);
      if (isWhole) {
        for (String line :
            TextLine.wrapped(g, row.words(), l.regular(14), area.getWidth() - NAME)) {
          y += 20;
          TextLine.of(line, l.regular(14), p.secondInk()).fromLeft(g, NAME, y);
        }
      }
      y += ROW;
    }
  }

  @Override
  protected String describe() {
    return heading
        + ": "
        + rows.stream().map(r -> r.name() + " " + r.figure()).collect(Collectors.joining("; "));
  }
}
