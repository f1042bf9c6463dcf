package sagwright.screen.bench;

import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.Reply;
import sagwright.screen.theme.Keys;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.UnderlinedField;

/**
 * What the hand says, before the bench is asked: stands where the answer will. Enter keeps it;
 * Space, which is the pedal's, keeps it and begins the test.
 */
final class GuessForm extends JPanel {
  private static final long serialVersionUID = 1L;

  private final UnderlinedField guess = new UnderlinedField("bench.guess", "N/mm or a word");
  private final JTextField hand = new JTextField(5);
  private final JLabel words = Text.note("");
  private final transient BenchActions actions;
  private final transient Consumer<String> complain;

  /**
   * @param space what Space does
   * @param complain hears what is wrong with what is typed; "" for nothing
   */
  GuessForm(BenchActions actions, Runnable space, Consumer<String> complain) {
    super(new MigLayout("insets 0, gap 14 4, fillx, hidemode 3", "[grow]", "[]2[]2[]14[]10[]"));
    this.actions = actions;
    this.complain = complain;
    setName("bench.guessForm");
    setOpaque(false);
    setVisible(false);
    add(Text.heading("First: what does the hand say?"), "wrap");
    add(Text.second("Flex the shaft by hand. How stiff is it as it lies?"), "wrap");
    add(words, "wrap");
    add(guess, "growx, wrap");
    JLabel whose = Text.second("whose hand");
    whose.setLabelFor(hand);
    add(whose, "split 3");
    add(hand, "hmin 44");
    add(Text.note("Enter keeps it.  Space tests."), "gapleft 10");
    hand.setName("bench.hand");
    hand.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, "whose hand, initials");
    for (JTextField field : new JTextField[] {guess, hand}) {
      field.addActionListener(e -> keep(() -> {}));
      Keys.bind(field, KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), "test", space);
      Keys.bind(field, KeyStroke.getKeyStroke(' '), "test.typed", () -> {});
    }
  }

  void show(BenchView view) {
    GuessView now = view.guess();
    boolean awaited = now != null && now.isAwaited();
    if (awaited && !isVisible()) {
      guess.setText("");
      hand.setText(now.hand());
    }
    if (awaited) {
      words.setText(
          now.words().isEmpty()
              ? ""
              : (view.order() == null ? "" : "as finished: ") + String.join(", ", now.words()));
    }
    setVisible(awaited);
  }

  void focus() {
    guess.requestFocusInWindow();
  }

  /**
   * Sends what is typed, or says what is wrong with it.
   *
   * @param then what is to be done once it is kept
   */
  void keep(Runnable then) {
    actions.guess(
        guess.getText(),
        hand.getText().trim(),
        Reply.onEventThread(
            () -> {
              complain.accept("");
              then.run();
            },
            why -> {
              complain.accept(why);
              focus();
            }));
  }
}
