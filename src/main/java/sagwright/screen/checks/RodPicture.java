package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.RodChart;
import sagwright.drawing.RodChartScene;
import sagwright.drawing.TextLine;
import sagwright.job.Days;
import sagwright.job.RodReading;
import sagwright.job.RodStanding;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The check rod's chart with its verdict in words over it. */
final class RodPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double CHART_TOP = 62;

  private transient RodStanding rod;

  RodPicture(String name) {
    super(name, new Dimension(460, 200));
  }

  void show(RodStanding next) {
    rod = next;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (rod == null) {
      return;
    }
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    String words = rod.hasRod() ? "Check rod " + rod.inWords() : "No check rod yet";
    TextLine.of(words, l.semiBold(20), p.ink()).fromLeft(g, 0, 24);
    double y =
        new Paragraph(l.regular(16), p.secondInk(), 21)
            .draw(g, rod.lookAt(), 0, 48, area.getWidth());
    if (!rod.readings().isEmpty()) {
      double top = Math.max(CHART_TOP, y - 6);
      Rectangle2D below = new Rectangle2D.Double(0, top, area.getWidth(), area.getHeight() - top);
      new RodChart(Theme.style()).paint(g, below, scene());
    }
  }

  private RodChartScene scene() {
    List<RodReading> readings = rod.readings();
    return new RodChartScene(
        readings.stream().mapToDouble(RodReading::differencePercent).toArray(),
        rod.from(),
        rod.chart(),
        Days.day(readings.get(0).at()),
        Days.day(rod.newest().at()));
  }

  @Override
  protected String describe() {
    return rod == null ? "" : rod.inWords() + ": " + rod.lookAt();
  }
}
