package sagwright.screen.rack;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** What has come to pass with a blank, newest on top; what is set aside is hollow. */
final class TimeLine extends Picture {
  private static final long serialVersionUID = 1L;
  private static final int ROW = 56;
  private static final double LINE = 132;
  private static final double WORDS = 156;
  private static final double FIGURES = 290;

  private transient List<RackView.Event> events = List.of();

  TimeLine() {
    super("timeline", new Dimension(600, ROW));
  }

  void show(List<RackView.Event> next) {
    events = next;
    revalidate();
    repaint();
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(
        super.getPreferredSize().width, eventHeight() * Math.max(1, events.size()));
  }

  /** Of one event, in pixels. */
  int eventHeight() {
    return super.getPreferredSize().height;
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Palette p = Theme.style().palette();
    g.setColor(p.ash());
    g.setStroke(new BasicStroke(4f));
    g.draw(new Line2D.Double(LINE, 16, LINE, 16 + ROW * Math.max(0, events.size() - 1.0)));
    for (int i = 0; i < events.size(); i++) {
      event(g, area, 22 + ROW * i, events.get(events.size() - 1 - i));
    }
  }

  private static void event(Graphics2D g, Rectangle2D area, double y, RackView.Event event) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    boolean aside = event.isSetAside();
    TextLine.of(event.day(), l.regular(16), p.secondInk()).toRight(g, LINE - 20, y);
    Ellipse2D dot = new Ellipse2D.Double(LINE - 6.5, y - 12.5, 13, 13);
    g.setColor(aside ? p.paper() : p.brass());
    g.fill(dot);
    g.setColor(aside ? p.secondInk() : p.ink());
    g.setStroke(new BasicStroke(2f));
    g.draw(dot);
    TextLine.of(event.what(), l.semiBold(16), aside ? p.secondInk() : p.ink())
        .fromLeft(g, WORDS, y);
    TextLine.of(event.figures(), l.regular(16), aside ? p.secondInk() : p.ink())
        .fromLeft(g, FIGURES, y);
    String details =
        TextLine.shortened(g, event.details(), l.regular(14), area.getWidth() - FIGURES);
    TextLine.of(details, l.regular(14), p.secondInk()).fromLeft(g, FIGURES, y + 21);
  }

  @Override
  protected String describe() {
    return events.stream()
        .map(e -> e.day() + " " + e.what() + " " + e.figures())
        .collect(Collectors.joining("; "));
  }
}
