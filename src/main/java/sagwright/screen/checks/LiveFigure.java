package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import sagwright.bench.SettledCounts;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** What the head shows at this moment, large, and whether it stands still. */
final class LiveFigure extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double LARGE = 78; // so that its figures are 56 high

  private final boolean isLoad;
  private final String unit;
  private String figure = "–";
  private String words = "";

  LiveFigure(String name, boolean isLoad) {
    super(name, new Dimension(300, 104));
    this.isLoad = isLoad;
    this.unit = isLoad ? "counts" : "steps";
  }

  void show(ChecksActions.Live now, SettledCounts.Channel channel) {
    boolean none = !now.isReading() || channel.readings() == 0;
    String nextFigure = none ? "–" : Figures.rounded(channel.mean(), 0);
    String nextWords =
        none
            ? now.line() + ": type the " + unit
            : unit
                + (channel.isStill() ? ", stands still" : ", still moves: wait")
                + "; noise "
                + Figures.rounded(channel.noise(), channel.noise() < 10 ? 1 : 0)
                + " from reading to reading";
    if (!nextFigure.equals(figure) || !nextWords.equals(words)) {
      figure = nextFigure;
      words = nextWords;
      repaint();
    }
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    TextLine.of(figure, l.semiBold(LARGE), isLoad ? p.load() : p.deflectionText())
        .fromLeft(g, 0, 68);
    String shown = TextLine.shortened(g, words, l.regular(16), area.getWidth());
    TextLine.of(shown, l.regular(16), p.ink()).fromLeft(g, 0, 94);
  }

  @Override
  protected String describe() {
    return figure + ": " + words;
  }
}
