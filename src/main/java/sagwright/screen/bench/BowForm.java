package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Reply;
import sagwright.screen.Typed;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;

/** Rolling the unloaded shaft past the gauge: a reading at each turn gives its bow. */
final class BowForm extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Mean, size and side, and one to see how well they fit. */
  private static final int LEAST_TURNS = 4;

  private static final int USUAL_STEP_DEGREES = 45;

  private final FieldGrid readings =
      new FieldGrid("bow.readings", List.of("turned, °", "gauge, mm"), 9, this::keep, () -> {});
  private final transient BenchActions actions;
  private final transient Runnable back;
  private final transient Consumer<String> complain;

  /**
   * @param back to the live bench
   * @param complain hears what is wrong with what is typed
   */
  BowForm(BenchActions actions, Runnable back, Consumer<String> complain) {
    super(new MigLayout("insets 8 0 0 0, gap 40 6", "[360!][grow,fill]", "[][grow,fill][]"));
    this.actions = actions;
    this.back = back;
    this.complain = complain;
    setName("bow");
    readings.enterBeginsWith(1); // the usual turns stand there
    add(Text.heading("How far off straight"), "wrap");
    JScrollPane scroll = Lists.scrolled(readings);
    add(scroll, "grow, hmin 100");
    JPanel words = new JPanel(new MigLayout("insets 0, gap 0 8, wrap 1"));
    for (String line :
        List.of(
            "No load on the shaft. The gauge reads positive the way the load pushes.",
            "0° is the mark on the butt end up. Turn the shaft by 45° at a time,",
            "read the gauge at each turn, any zero will do: half of what it swings",
            "through is the bow, and the highest reading shows its side.",
            "Half way round out-of-round reads the same again, and is told apart.")) {
      words.add(Text.plain(line));
    }
    add(words, "aligny top, wrap");
    add(new QuietButton("bow.back", "back to the bench", "Esc", back), "");
  }

  /** Empties the form, but for the usual turns, and goes to its first field. */
  void begin() {
    List<List<String>> turns = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += USUAL_STEP_DEGREES) {
      turns.add(List.of(String.valueOf(degrees), ""));
    }
    readings.fill(turns);
    readings.focusFirst();
  }

  /** Sends what is typed, or says what is wrong with it. */
  void keep() {
    try {
      List<BenchActions.Rolled> rolled = new ArrayList<>();
      for (FieldGrid.Line line : readings.typed()) {
        if (!line.texts().get(1).isEmpty()) {
          String at = "turn " + line.number() + ", ";
          rolled.add(
              new BenchActions.Rolled(
                  Typed.number(at + "turned", line.texts().get(0)),
                  Typed.quantity(at + "gauge", line.texts().get(1), Unit.MILLIMETRE)));
        }
      }
      if (rolled.size() < LEAST_TURNS) {
        complain.accept("Four turns at least; so far there are " + rolled.size() + ".");
        return;
      }
      actions.keepBow(rolled, Reply.onEventThread(back, complain));
    } catch (ComplaintException e) {
      complain.accept(e.getMessage());
      readings.focusOn(e.field());
    }
  }
}
