package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.Paragraph;
import sagwright.drawing.Style;
import sagwright.grade.WordScale;
import sagwright.screen.Sentence;
import sagwright.screen.ShaftPicture;
import sagwright.screen.finish.PlanPicture;
import sagwright.screen.finish.PlanScene;
import sagwright.screen.finish.PlanWords;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Theme;

/**
 * What the blank on the bench will be for the order it is tried for: the finish plan in it, all
 * figures of the forecast, what has changed since the grade before, and every warning.
 */
final class FinishedPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final ShaftPicture drawing = new ShaftPicture("finished.drawing", "");
  private final PlanPicture plan = new PlanPicture("finished.plan");
  private final Notes notes = new Notes();
  private transient BenchView.Forecast shown;
  private transient WordScale words;

  FinishedPanel(Runnable back) {
    super(new MigLayout("insets 0, gap 0 6, wrap", "[grow,fill]", "[grow,fill][][fill][]"));
    setName("finished");
    add(drawing, "hmin 168");
    add(plan);
    add(notes, "hmin 136");
    add(
        new QuietButton("finished.back", "back to the bench", "Esc", back),
        "growx 0, aligny bottom");
    showCue();
  }

  void show(BenchView view) {
    // views come as fast as readings do; the cue changes only with what is forecast
    if (!Objects.equals(view.forecast(), shown) || !Objects.equals(view.words(), words)) {
      shown = view.forecast();
      words = view.words();
      showCue();
    }
    notes.show(view);
  }

  private void showCue() {
    FinishedCue finished = shown == null ? null : shown.finished();
    if (finished == null) {
      drawing.showWanting("Name an order, and the finished cue is drawn here.");
      plan.showWanting("");
    } else {
      drawing.show(PlanScene.of(finished.planned()));
      plan.show(finished.planned(), words, shown.units());
    }
  }

  /** What stands in whole sentences. */
  private static final class Notes extends Picture {
    private static final long serialVersionUID = 1L;
    private static final double SIZE = 15;
    private static final double LINE = 21;

    private transient List<String> lines = List.of();

    Notes() {
      super("finished.notes", new Dimension(900, 136));
    }

    void show(BenchView view) {
      List<String> next = view.forecast() == null ? List.of() : lines(view);
      if (!next.equals(lines)) {
        lines = next;
        repaint();
      }
    }

    private static List<String> lines(BenchView view) {
      FinishedCue finished = view.forecast().finished();
      List<String> lines = new ArrayList<>();
      lines.add(Sentence.of(PlanWords.wanted(finished.planned())));
      String splice = PlanWords.splice(finished.planned());
      if (!splice.isEmpty()) {
        lines.add(Sentence.of(splice));
      }
      view.warnings().forEach(warning -> lines.add(Sentence.of(warning)));
      return lines;
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      Style style = Theme.style();
      Paragraph plain = new Paragraph(style.lettering().regular(SIZE), style.palette().ink(), LINE);
      double y = 18;
      for (String line : lines) {
        y = plain.draw(g, line, 0, y, area.getWidth());
      }
    }

    @Override
    protected String describe() {
      return String.join(" ", lines);
    }
  }
}
