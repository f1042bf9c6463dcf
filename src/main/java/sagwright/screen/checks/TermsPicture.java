package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import sagwright.check.LineCalibration;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** How well an instrument follows its line, in the terms of ISO 7500-1, and its class in words. */
final class TermsPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final String WANTING =
      "After three points their line is drawn, and what each misses it by.";
  private static final double ROW = 25;
  private static final double FIGURE = 230;

  private final boolean isLoad;
  private transient List<Words.Term> rows = List.of();

  TermsPicture(String name, boolean isLoad) {
    super(name, new Dimension(420, (int) (6 * ROW + 6)));
    this.isLoad = isLoad;
    show(null);
  }

  /**
   * @param line null with too few points
   */
  void show(LineCalibration line) {
    rows = Words.terms(line, isLoad);
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    double y = 18;
    if (rows.isEmpty()) {
      TextLine.of(WANTING, l.regular(16), p.secondInk()).fromLeft(g, 0, y);
    }
    for (Words.Term row : rows) {
      TextLine.of(row.name(), l.regular(16), p.ink()).fromLeft(g, 0, y);
      TextLine.of(row.figure(), l.semiBold(16), p.ink()).toRight(g, FIGURE, y);
      String words =
          TextLine.shortened(g, row.words(), l.regular(14), area.getWidth() - FIGURE - 14);
      TextLine.of(words, l.regular(14), p.secondInk()).fromLeft(g, FIGURE + 14, y);
      y += ROW;
    }
  }

  @Override
  protected String describe() {
    return rows.isEmpty()
        ? WANTING
        : rows.stream()
            .map(r -> r.name() + " " + r.figure() + " " + r.words())
            .collect(Collectors.joining("; "));
  }
}
