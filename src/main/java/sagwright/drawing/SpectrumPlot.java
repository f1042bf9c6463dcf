package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.stream.IntStream;

/** Which frequencies the load at rest holds, and where the mains hum among them. */
public final class SpectrumPlot {
  private static final double LEFT = 56;

  /** The first few belong to drift. */
  private static final int SKIPPED = 4;

  /**
   * What is drawn.
   *
   * @param stepHz from one amplitude to the next
   * @param amplitude from 0 Hz on
   * @param unit of the amplitudes
   * @param humHz where the mains hum is seen, NaN where it is not
   * @param humInWords "50 Hz mains"
   */
  public record Scene(
      double stepHz, double[] amplitude, String unit, double humHz, String humInWords) {}

  private final Style style;

  public SpectrumPlot(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, Scene scene) {
    Palette p = style.palette();
    int n = scene.amplitude().length;
    double[] amplitude = Arrays.copyOfRange(scene.amplitude(), Math.min(SKIPPED, n), n);
    double[] hz =
        IntStream.range(0, amplitude.length)
            .mapToDouble(i -> (i + SKIPPED) * scene.stepHz())
            .toArray();
    double most = Arrays.stream(amplitude).max().orElse(1);
    double to = hz.length == 0 ? 40 : hz[hz.length - 1];
    QuietPlot plot =
        new QuietPlot(
            style,
            area,
            LEFT,
            new QuietPlot.Scale(0, to, "Hz", 70, p.ink()),
            new QuietPlot.Scale(0, 1.15 * Math.max(most, 1e-9), scene.unit(), 40, p.load()));
    plot.line(hz, amplitude, Style.HAIR, p.load());
    plot.draw(g);
    if (!Double.isNaN(scene.humHz())) {
      double x = plot.xOf(scene.humHz());
      boolean leftOf = x > plot.inside().getCenterX();
      TextLine words = TextLine.of(scene.humInWords(), style.lettering().semiBold(14), p.ink());
      double y = plot.inside().getMinY() + 6;
      if (leftOf) {
        words.toRight(g, x - 8, y);
      } else {
        words.fromLeft(g, x + 8, y);
      }
      g.setColor(p.ink());
      g.setStroke(Style.DOTTED);
      g.draw(new Line2D.Double(x, plot.inside().getMinY() - 6, x, plot.inside().getMaxY()));
    }
  }
}
