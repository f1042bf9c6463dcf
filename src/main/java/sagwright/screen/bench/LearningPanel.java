package sagwright.screen.bench;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Objects;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.GuessLine;
import sagwright.drawing.HandChart;
import sagwright.drawing.HandChartScene;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.TextLine;
import sagwright.job.Days;
import sagwright.job.HandLearning;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Theme;

/** How the hand learns: the last guess beside its answer, and all guesses one after the other. */
final class LearningPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final Sheet sheet = new Sheet();

  LearningPanel(Runnable back) {
    super(new BorderLayout());
    setName("learning");
    JPanel foot = new JPanel(new MigLayout("insets 0"));
    foot.add(new QuietButton("learning.back", "back to the bench", "Esc", back));
    add(sheet, BorderLayout.CENTER);
    add(foot, BorderLayout.PAGE_END);
  }

  void show(BenchView view) {
    sheet.show(view.guess());
  }

  private static final class Sheet extends Picture {
    private static final long serialVersionUID = 1L;
    private static final double LINE_HEIGHT = 26;

    private transient GuessView view;

    Sheet() {
      super("learning.sheet", new Dimension(900, 520));
    }

    void show(GuessView next) {
      if (!Objects.equals(next, view)) {
        view = next;
        repaint();
      }
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      if (view == null) {
        return;
      }
      Lettering l = Theme.style().lettering();
      Palette p = Theme.style().palette();
      TextLine.of(heading(), l.semiBold(24), p.ink()).fromLeft(g, 0, 30);
      double y =
          new Paragraph(l.regular(20), p.ink(), LINE_HEIGHT)
              .draw(g, view.learning().inWords(), 0, 64, area.getWidth());
      if (view.isAnswered()) {
        y += 14;
        TextLine.of("This time " + Guessing.inWords(view) + ".", l.semiBold(20), p.ink())
            .fromLeft(g, 0, y);
        new GuessLine(Theme.style())
            .paint(
                g,
                new Rectangle2D.Double(1, y + 12, area.getWidth() - 2, GuessLine.HEIGHT),
                view.guessedNPerMm(),
                view.benchMark());
        y += GuessLine.HEIGHT + 12;
      }
      if (!view.learning().felt().isEmpty()) {
        Rectangle2D below = new Rectangle2D.Double(0, y, area.getWidth(), area.getHeight() - y - 6);
        new HandChart(Theme.style()).paint(g, below, scene(view.learning()));
      }
    }

    private String heading() {
      return view.hand().isEmpty()
          ? "How the hand learns"
          : "How the hand of " + view.hand() + " learns";
    }

    private static HandChartScene scene(HandLearning learning) {
      List<HandLearning.Felt> felt = learning.felt();
      return new HandChartScene(
          felt.stream().mapToDouble(HandLearning.Felt::offPercent).toArray(),
          learning.lastWithinPercent(),
          HandLearning.LAST,
          Days.day(felt.get(0).at()),
          Days.day(felt.get(felt.size() - 1).at()));
    }

    @Override
    protected String describe() {
      return view == null
          ? ""
          : heading() + ". " + view.learning().inWords() + " " + Guessing.inWords(view);
    }
  }
}
