package sagwright.screen.bench;

import java.util.Locale;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;

/** A question in the foot's place, with its answers and their keys. */
final class QuestionStrip extends JPanel {
  private static final long serialVersionUID = 1L;

  QuestionStrip(BenchView.Question question, BenchActions actions) {
    super(new MigLayout("insets 0, gap 12 0, aligny center"));
    setName("question");
    add(Text.label(question.words(), 20, true), "span, wmin 0, wrap");
    for (BenchView.Offer offer : question.offers()) {
      String key = String.valueOf(BenchScreen.keyOf(offer.choice())).toUpperCase(Locale.ROOT);
      add(
          new QuietButton(
              "question." + offer.choice(),
              offer.words(),
              key,
              () -> actions.answer(offer.choice())));
    }
  }
}
