package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Named amounts as bars one under the other, as the budget of an uncertainty: greatest first. */
public final class SeriesBars {
  /** Height of one bar with its gap. */
  public static final double ROW = 26;

  /**
   * One bar.
   *
   * @param words what it is
   * @param amount its length, never negative
   * @param figure the amount as written behind it
   */
  public record Bar(String words, double amount, String figure) {}

  private static final double FIGURE_ROOM = 96;

  private final Style style;

  public SeriesBars(Style style) {
    this.style = style;
  }

  /** Height that a number of bars needs. */
  public static double height(int bars) {
    return bars * ROW;
  }

  public void paint(Graphics2D g, Rectangle2D area, List<Bar> bars) {
    Style.smooth(g);
    Palette p = style.palette();
    double wordsWidth = 0;
    double greatest = 0;
    for (Bar bar : bars) {
      TextLine words = TextLine.of(bar.words(), style.lettering().regular(15), p.ink());
      wordsWidth = Math.max(wordsWidth, words.width(g));
      greatest = Math.max(greatest, bar.amount());
    }
    double left = area.getMinX() + wordsWidth + 16;
    double room = area.getMaxX() - FIGURE_ROOM - left;
    double y = area.getMinY();
    for (Bar bar : bars) {
      double length = greatest == 0 ? 0 : room * bar.amount() / greatest;
      TextLine.of(bar.words(), style.lettering().regular(15), p.ink())
          .toRight(g, left - 12, y + 18);
      Rectangle2D wood = new Rectangle2D.Double(left, y + 5, length, 16);
      g.setColor(p.ash());
      g.fill(wood);
      g.setColor(p.ink());
      g.setStroke(Style.HAIR);
      g.draw(new Line2D.Double(left + length, y + 5, left + length, y + 21));
      TextLine.of(bar.figure(), style.lettering().regular(15), p.secondInk())
          .toRight(g, area.getMaxX(), y + 18);
      y += ROW;
    }
    g.setColor(p.ink());
    g.draw(new Line2D.Double(left, area.getMinY(), left, y));
  }
}
