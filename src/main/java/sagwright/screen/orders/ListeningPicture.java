package sagwright.screen.orders;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;
import sagwright.drawing.Lettering;
import sagwright.drawing.ListeningStrip;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** What each set-up that is asked at feels of the shaft, and what the splice does there. */
final class ListeningPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final int ROW = 26;
  private static final double NAME = 70;
  private static final double SHAFT = 0.34;

  private transient Taper shaft;
  private transient List<Strip> strips = List.of();
  private double modulusToShearRatio = 1;

  /**
   * One set-up.
   *
   * @param words what is to be said of it, empty for nothing
   */
  record Strip(String name, SetUp setUp, String words) {}

  /**
   * @param rows room for so many set-ups
   */
  ListeningPicture(String name, int rows) {
    super(name, new Dimension(300, rows * ROW));
  }

  /**
   * @param next null while nothing makes a shaft
   * @param shown set-ups on it
   */
  void show(Taper next, List<Strip> shown, double ratio) {
    shaft = next;
    strips = List.copyOf(shown);
    modulusToShearRatio = ratio;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (shaft == null) {
      return;
    }
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    double width = area.getWidth() * SHAFT;
    ListeningStrip strip = new ListeningStrip(Theme.style());
    for (int i = 0; i < strips.size() && (i + 1) * ROW <= area.getHeight(); i++) {
      double top = i * ROW;
      TextLine.of(strips.get(i).name(), l.regular(14), p.ink()).fromLeft(g, 2, top + 17);
      strip.paint(
          g,
          new Rectangle2D.Double(NAME, top + 2, width, ROW - 6),
          shaft,
          strips.get(i).setUp(),
          modulusToShearRatio);
      double from = NAME + width + 12;
      String words =
          TextLine.shortened(g, strips.get(i).words(), l.regular(14), area.getWidth() - from);
      TextLine.of(words, l.regular(14), p.secondInk()).fromLeft(g, from, top + 17);
    }
  }

  @Override
  protected String describe() {
    return strips.stream()
        .map(strip -> strip.name() + ": " + strip.words())
        .collect(Collectors.joining("; "));
  }
}
