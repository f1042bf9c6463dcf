package sagwright.screen.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.SeriesBars;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.Sentence;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Theme;

/**
 * What stands behind the ±: the budget with what to do about it, the second opinion, the repeats,
 * the wood at other moistures, what was assumed, what to be warned of.
 */
final class BehindPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Sheet sheet = new Sheet();

  BehindPanel(Runnable back) {
    super(new BorderLayout());
    setName("behind");
    JPanel foot = new JPanel(new BorderLayout());
    foot.add(
        new QuietButton("behind.back", "back to the bench", "Esc", back), BorderLayout.LINE_START);
    add(sheet, BorderLayout.CENTER);
    add(foot, BorderLayout.PAGE_END);
  }

  void show(BenchView view) {
    sheet.view = view;
    sheet.repaint();
  }

  private static final class Sheet extends Picture {
    private static final long serialVersionUID = 1L;

    /** Of two sentences, that they are told apart where the first runs over. */
    private static final double BETWEEN = 4;

    private transient BenchView view;

    Sheet() {
      super("behind.sheet", new Dimension(900, 560));
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      if (view == null || view.answer() == null) {
        return;
      }
      BehindView behind = view.answer().behind();
      double middle = area.getWidth() * 0.54;
      double y = budget(g, behind, middle - 40);
      y = sentences(g, place(0, y + 8, middle - 40), List.of(behind.advice()), true);
      y = heading(g, 0, y + 26, "Second opinion");
      sentences(g, place(0, y, middle - 40), List.of(behind.secondOpinion()), false);

      double right = area.getMaxX() - middle;
      y = wood(g, behind, place(middle, 34, right));
      y = heading(g, middle, y + 26, "Repeats and turns");
      y = sentences(g, place(middle, y, right), behind.turns(), false);
      y = heading(g, middle, y + 24, "To be warned of");
      List<String> warned = view.warnings().isEmpty() ? List.of("nothing") : view.warnings();
      y = sentences(g, place(middle, y, right), warned, false);
      if (!behind.assumed().isEmpty()) {
        sentences(g, place(middle, y + 6, right), List.of(behind.assumed()), false);
      }
    }

    private static Rectangle2D place(double left, double top, double width) {
      return new Rectangle2D.Double(left, top, width, 0);
    }

    private static double budget(Graphics2D g, BehindView behind, double width) {
      Style style = Theme.style();
      Palette p = style.palette();
      heading(g, 0, 34, "What stands behind the ±");
      String under = "each source's share of the squares, " + behind.budgetOf();
      TextLine.of(under, style.lettering().regular(14), p.secondInk()).fromLeft(g, 0, 58);
      double height = SeriesBars.height(behind.budget().size());
      new SeriesBars(style).paint(g, new Rectangle2D.Double(0, 70, width, height), behind.budget());
      String together = behind.together() + "; times 1.96 it is the ± of the screen, 95 %";
      return sentences(g, place(0, 70 + height + 26, width), List.of(together), false);
    }

    private static double wood(Graphics2D g, BehindView behind, Rectangle2D place) {
      Palette p = Theme.style().palette();
      Lettering l = Theme.style().lettering();
      double y = heading(g, place.getMinX(), place.getMinY(), "The wood");
      double gpa = place.getMinX() + place.getWidth() * 0.76;
      TextLine.of("modulus, GPa", l.regular(14), p.secondInk()).toRight(g, gpa, y - 28);
      TextLine.of("density, kg/m³", l.regular(14), p.secondInk())
          .toRight(g, place.getMaxX(), y - 28);
      for (BehindView.Wood wood : behind.woods()) {
        TextLine.of(wood.when(), l.regular(16), p.ink()).fromLeft(g, place.getMinX(), y);
        TextLine.of(wood.modulusGPa(), l.regular(16), p.ink()).toRight(g, gpa, y);
        TextLine.of(wood.densityKgM3(), l.regular(16), p.ink()).toRight(g, place.getMaxX(), y);
        y += 22;
      }
      return y;
    }

    /** Returns where the first line under it stands. */
    private static double heading(Graphics2D g, double x, double baseline, String words) {
      TextLine.of(words, Theme.style().lettering().semiBold(20), Theme.style().palette().ink())
          .fromLeft(g, x, baseline);
      return baseline + 26;
    }

    /** Returns where the last line stands. */
    private static double sentences(
        Graphics2D g, Rectangle2D place, List<String> sentences, boolean isBold) {
      Lettering l = Theme.style().lettering();
      Paragraph all =
          new Paragraph(isBold ? l.semiBold(15) : l.regular(15), Theme.style().palette().ink(), 20);
      double y = place.getMinY();
      for (String sentence : sentences) {
        y = all.draw(g, Sentence.of(sentence), place.getMinX(), y, place.getWidth()) + BETWEEN;
      }
      return y - BETWEEN;
    }

    @Override
    protected String describe() {
      if (view == null || view.answer() == null) {
        return "no answer yet";
      }
      BehindView behind = view.answer().behind();
      List<String> words = new ArrayList<>();
      words.add(behind.together());
      words.add(behind.advice());
      words.add(behind.secondOpinion());
      behind.woods().forEach(w -> words.add(w.when() + ": " + w.modulusGPa() + " GPa"));
      words.addAll(behind.turns());
      words.addAll(view.warnings());
      return String.join(". ", words);
    }
  }
}
