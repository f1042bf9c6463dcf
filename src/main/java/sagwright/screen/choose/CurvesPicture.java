package sagwright.screen.choose;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import sagwright.drawing.LoadDeflectionPlot;
import sagwright.drawing.LoadDeflectionScene;
import sagwright.drawing.Palette;
import sagwright.drawing.PickLine;
import sagwright.drawing.PlottedRun;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The newest runs of the picked blanks over each other. */
final class CurvesPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double LEGEND = 208;

  private transient List<Closely> picked = List.of();

  CurvesPicture(String name) {
    super(name, new Dimension(340, 176));
  }

  /**
   * @param closely the picks, the first first
   */
  void show(List<Closely> closely) {
    picked = closely;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (picked.isEmpty()) {
      return;
    }
    Style style = Theme.style();
    List<PlottedRun> runs = new ArrayList<>();
    double greatestMm = 0;
    double greatestN = 0;
    for (int i = 0; i < picked.size(); i++) {
      Closely pick = picked.get(i);
      runs.add(0, new PlottedRun(pick.deflectionMm(), pick.loadN(), PlottedRun.Kind.pick(i)));
      for (int j = 0; j < pick.loadN().length; j++) {
        greatestMm = Math.max(greatestMm, pick.deflectionMm()[j]);
        greatestN = Math.max(greatestN, pick.loadN()[j]);
      }
    }
    Rectangle2D plot =
        new Rectangle2D.Double(0, 0, area.getWidth() - LEGEND - 12, area.getHeight());
    new LoadDeflectionPlot(style)
        .paint(
            g,
            plot,
            new LoadDeflectionScene(runs, null, Double.NaN, greatestMm * 1.05, greatestN * 1.05));
    legend(g, style, area);
  }

  private void legend(Graphics2D g, Style style, Rectangle2D area) {
    Palette p = style.palette();
    double x = area.getWidth() - LEGEND;
    boolean isWide = picked.size() < 3;
    double pitch = isWide ? 62 : 36;
    TextLine.of("their newest runs on the bench", style.lettering().regular(14), p.secondInk())
        .toRight(g, area.getWidth(), 13);
    double y = 38;
    for (int i = 0; i < picked.size(); i++) {
      Closely pick = picked.get(i);
      PickLine.of(i).sample(g, style, x, y - 5, 24);
      var bold = style.lettering().bold(14);
      TextLine.of(TextLine.shortened(g, pick.tag(), bold, LEGEND - 32), bold, p.ink())
          .fromLeft(g, x + 32, y);
      String second = stiffness(pick) + moisture(pick);
      TextLine.of(second, style.lettering().regular(14), p.ink()).fromLeft(g, x + 32, y + 18);
      if (isWide) {
        String third = pick.mostly().isEmpty() ? "" : "± mostly by " + pick.mostly();
        var regular = style.lettering().regular(14);
        TextLine.of(TextLine.shortened(g, third, regular, LEGEND - 32), regular, p.secondInk())
            .fromLeft(g, x + 32, y + 36);
      }
      y += pitch;
    }
  }

  private static String stiffness(Closely pick) {
    return Figures.rounded(pick.stiffnessNPerMm(), 2) + " N/mm";
  }

  private static String moisture(Closely pick) {
    return pick.moisturePercent() == null
        ? ""
        : ", " + Figures.rounded(pick.moisturePercent(), 1) + " % moist";
  }

  @Override
  protected String describe() {
    StringJoiner words = new StringJoiner("; ", "Their newest runs on the bench: ", ".");
    picked.forEach(pick -> words.add(pick.tag() + " " + stiffness(pick)));
    return picked.isEmpty() ? "" : words.toString();
  }
}
