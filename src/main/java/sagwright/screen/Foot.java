package sagwright.screen;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/**
 * The two lines at the foot of a page, left of its one control: what keeps people safe or what
 * comes next, large; what is less urgent under it, in one line or two. Where the large words are
 * too long for one line they take all the room.
 */
public final class Foot extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double LARGE = 24;

  /** Safety text is never smaller than this. */
  private static final double LEAST_LARGE = 20;

  private static final double SMALL = 14;
  private static final String BETWEEN_SENTENCES = "  ";

  private String first = "";
  private String second = "";

  public Foot() {
    super("foot", new Dimension(300, 72));
  }

  public void say(String large, String small) {
    if (!large.equals(first) || !small.equals(second)) {
      first = large;
      second = small;
      repaint();
    }
  }

  @Override
  protected String describe() {
    return first + " " + second;
  }

  /** Broken between two sentences where that can be, that none is torn for a word. */
  private List<String> smallLines(Graphics2D g, Font font, double width) {
    if (TextLine.wrapped(g, second, font, width).size() == 1) {
      return List.of(second);
    }
    int end = second.lastIndexOf(BETWEEN_SENTENCES);
    while (end > 0 && TextLine.wrapped(g, second.substring(0, end), font, width).size() > 1) {
      end = second.lastIndexOf(BETWEEN_SENTENCES, end - 1);
    }
    return end > 0
        ? List.of(second.substring(0, end), second.substring(end).trim())
        : TextLine.wrapped(g, second, font, width);
  }

  private static String rest(List<String> lines) {
    return String.join(" ", lines.subList(1, lines.size()));
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Palette p = Theme.style().palette();
    Lettering lettering = Theme.style().lettering();
    double size = LARGE;
    TextLine line = TextLine.of(first, lettering.semiBold(size), p.ink());
    while (line.width(g) > area.getWidth() && size > LEAST_LARGE) {
      size -= 1;
      line = TextLine.of(first, lettering.semiBold(size), p.ink());
    }
    if (line.width(g) <= area.getWidth()) {
      Font least = lettering.regular(SMALL);
      List<String> lines = smallLines(g, least, area.getWidth());
      boolean isOne = lines.size() == 1;
      line.fromLeft(g, 0, isOne ? 33 : 27);
      double below = isOne ? 60 : 50;
      for (String part : isOne ? lines : List.of(lines.get(0), rest(lines))) {
        String shown = TextLine.shortened(g, part, least, area.getWidth());
        TextLine.of(shown, least, p.secondInk()).fromLeft(g, 0, below);
        below += 19;
      }
      return;
    }
    new Paragraph(lettering.semiBold(LEAST_LARGE), p.ink(), 27)
        .draw(g, first, 0, 28, area.getWidth());
  }
}
