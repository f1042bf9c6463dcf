package sagwright.screen.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.SeriesBars;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Theme;

/** What stands behind the ±: the budget, what was assumed, what to be warned of. */
final class BehindPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Sheet sheet = new Sheet();

  BehindPanel(Runnable back) {
    super(new BorderLayout());
    setName("behind");
    QuietButton button = new QuietButton("behind.back", "back to the bench", "Esc");
    button.addActionListener(e -> back.run());
    JPanel foot = new JPanel(new BorderLayout());
    foot.add(button, BorderLayout.LINE_START);
    add(sheet, BorderLayout.CENTER);
    add(foot, BorderLayout.PAGE_END);
  }

  void show(BenchView view) {
    sheet.view = view;
    sheet.repaint();
  }

  private static final class Sheet extends Picture {
    private static final long serialVersionUID = 1L;

    private transient BenchView view;

    Sheet() {
      super("behind.sheet", new Dimension(900, 400));
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      if (view == null || view.answer() == null) {
        return;
      }
      Style.smooth(g);
      Style style = Theme.style();
      Lettering l = style.lettering();
      Palette p = style.palette();
      double middle = area.getWidth() * 0.52;
      TextLine.of("What stands behind the ±", l.semiBold(24), p.ink()).fromLeft(g, 0, 34);
      TextLine.of(
              "each source's share of the modulus, one standard uncertainty",
              l.regular(14),
              p.secondInk())
          .fromLeft(g, 0, 60);
      List<SeriesBars.Bar> bars = view.answer().budget();
      new SeriesBars(style)
          .paint(
              g, new Rectangle2D.Double(0, 80, middle - 40, SeriesBars.height(bars.size())), bars);
      double y = 80 + SeriesBars.height(bars.size()) + 34;
      double one = view.answer().modulusMPa().standardUncertainty();
      TextLine.of("together ", l.regular(16), p.ink())
          .then(Figures.value(one, one) + " MPa", l.semiBold(16), p.ink())
          .then("; times 1.96 it is the ± of the screen, 95 %", l.regular(16), p.secondInk())
          .fromLeft(g, 0, y);
      double bottom = list(g, area, middle, 34, "To be warned of", view.warnings(), "nothing");
      list(
          g,
          area,
          middle,
          bottom + 30,
          "Taken for want of better",
          view.answer().assumed(),
          "nothing");
    }

    private static double list(
        Graphics2D g,
        Rectangle2D area,
        double x,
        double top,
        String heading,
        List<String> lines,
        String none) {
      Lettering l = Theme.style().lettering();
      Palette p = Theme.style().palette();
      TextLine.of(heading, l.semiBold(24), p.ink()).fromLeft(g, x, top);
      double y = top + 30;
      double width = area.getMaxX() - x;
      for (String line : lines.isEmpty() ? List.of(none) : lines) {
        for (String part : TextLine.wrapped(g, line, l.regular(16), width)) {
          TextLine.of(part, l.regular(16), p.ink()).fromLeft(g, x, y);
          y += 22;
        }
        y += 6;
      }
      return y;
    }

    @Override
    protected String describe() {
      return view == null || view.answer() == null
          ? "no answer yet"
          : String.join(". ", view.warnings());
    }
  }
}
