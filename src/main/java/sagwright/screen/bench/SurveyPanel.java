package sagwright.screen.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.Lettering;
import sagwright.drawing.ModulusDrawing;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.TextLine;
import sagwright.screen.Sentence;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Theme;

/** What several runs on one shaft show together, and what to measure next. */
final class SurveyPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Sheet sheet = new Sheet();
  private final QuietButton next;

  /**
   * @param measureNext sets the bench up as proposed
   * @param usual sets it up as usual again
   */
  SurveyPanel(Runnable back, Runnable measureNext, Runnable usual) {
    super(new BorderLayout());
    setName("survey");
    next = new QuietButton("survey.next", "set up as proposed first", "M", measureNext);
    JPanel foot = new JPanel(new MigLayout("insets 0, gap 24 0"));
    foot.add(new QuietButton("survey.back", "back to the bench", "Esc", back));
    foot.add(next);
    foot.add(new QuietButton("survey.usual", "the usual set-up", "U", usual));
    add(sheet, BorderLayout.CENTER);
    add(foot, BorderLayout.PAGE_END);
  }

  void show(BenchView view) {
    SurveyView survey = view.answer() == null ? null : view.answer().survey();
    next.setEnabled(survey != null && !survey.next().isEmpty());
    sheet.show(survey);
  }

  private static final class Sheet extends Picture {
    private static final long serialVersionUID = 1L;

    private static final double ROW = 22;
    private static final double DRAWING = 300;
    private static final int MOST_RUNS = 9;

    private transient SurveyView view;

    Sheet() {
      super("survey.sheet", new Dimension(900, 560));
    }

    void show(SurveyView survey) {
      if (survey == null ? view != null : !survey.equals(view)) {
        view = survey;
        repaint();
      }
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      if (view == null) {
        return;
      }
      double drawing = Math.max(DRAWING, area.getHeight() * 0.5);
      new ModulusDrawing(Theme.style())
          .paint(g, new Rectangle2D.Double(1, 4, area.getWidth() - 2, drawing - 10), view.scene());
      double middle = area.getWidth() * 0.5;
      runs(g, drawing + 18, middle - 32);
      models(g, area, middle, drawing + 18);
    }

    private void runs(Graphics2D g, double top, double right) {
      Palette p = Theme.style().palette();
      Lettering l = Theme.style().lettering();
      double[] columns = {24, right * 0.52, right * 0.72, right * 0.93};
      head(g, top, columns, "set-up, mm", "listens to", "GPa", "off, u");
      double y = top + ROW + 4;
      List<SurveyView.RunRow> rows = view.runs();
      int from = Math.max(0, rows.size() - MOST_RUNS);
      for (SurveyView.RunRow row : rows.subList(from, rows.size())) {
        TextLine.of(String.valueOf(row.number()), l.semiBold(15), p.ink()).fromLeft(g, 0, y);
        TextLine.of(row.setUp(), l.regular(15), p.ink()).fromLeft(g, columns[0], y);
        TextLine.of(row.listens(), l.regular(15), p.ink()).fromLeft(g, columns[1], y);
        TextLine.of(row.modulusGPa(), l.regular(15), p.ink()).fromLeft(g, columns[2], y);
        String off = row.standsOut() ? row.off() + " !" : row.off();
        TextLine.of(off, row.standsOut() ? l.bold(15) : l.regular(15), p.ink())
            .toRight(g, right, y);
        y += ROW;
      }
      if (from > 0) {
        TextLine.of("and " + from + " earlier", l.regular(14), p.secondInk()).fromLeft(g, 24, y);
      }
    }

    private void models(Graphics2D g, Rectangle2D area, double left, double top) {
      Palette p = Theme.style().palette();
      Lettering l = Theme.style().lettering();
      double right = area.getMaxX();
      double y = top;
      if (!view.models().isEmpty()) {
        TextLine.of("model", l.regular(14), p.secondInk()).fromLeft(g, left, y);
        TextLine.of("GPa, ± is 95 %", l.regular(14), p.secondInk()).fromLeft(g, left + 84, y);
        TextLine.of("χ²", l.regular(14), p.secondInk()).toRight(g, right - 64, y);
        TextLine.of("AICc", l.regular(14), p.secondInk()).toRight(g, right, y);
        y += ROW + 4;
      }
      for (SurveyView.ModelRow model : view.models()) {
        double room = right - left - 84 - 130;
        TextLine.of(model.word(), model.isProposed() ? l.bold(15) : l.regular(15), p.ink())
            .fromLeft(g, left, y);
        TextLine.of(model.chiSquared(), l.regular(15), p.ink()).toRight(g, right - 64, y);
        TextLine.of(model.aicc(), l.regular(15), p.ink()).toRight(g, right, y);
        y = new Paragraph(l.regular(15), p.ink(), ROW).draw(g, model.says(), left + 84, y, room);
      }
      y = sentence(g, view.reason(), left, y + 6, right - left, true);
      for (String note : view.notes()) {
        y = sentence(g, note, left, y, right - left, false);
      }
      if (!view.next().isEmpty()) {
        y = sentence(g, "Measure next, to learn most:", left, y + 6, right - left, true);
        for (SurveyView.Next proposal : view.next()) {
          y = sentence(g, proposal.words(), left, y, right - left, false);
        }
      }
    }

    private static double sentence(
        Graphics2D g, String words, double left, double top, double width, boolean isBold) {
      Lettering l = Theme.style().lettering();
      Font font = isBold ? l.semiBold(15) : l.regular(15);
      return 2
          + new Paragraph(font, Theme.style().palette().ink(), 20)
              .draw(g, Sentence.of(words), left, top, width);
    }

    private static void head(Graphics2D g, double y, double[] columns, String... words) {
      Palette p = Theme.style().palette();
      Lettering l = Theme.style().lettering();
      for (int i = 0; i < columns.length; i++) {
        TextLine.of(words[i], l.regular(14), p.secondInk()).fromLeft(g, columns[i], y);
      }
    }

    @Override
    protected String describe() {
      if (view == null) {
        return "no run yet";
      }
      StringBuilder words = new StringBuilder(view.runs().size() + " runs. " + view.reason());
      view.next().forEach(next -> words.append(". ").append(next.words()));
      return words.toString();
    }
  }
}
