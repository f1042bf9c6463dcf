package sagwright.screen.checks;

import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.job.DueCheck.Subject;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;

/**
 * The checks. On the list of what is due a letter or Enter opens one of them: L load, G gauge, S
 * its spring, F frame, R rod, H the line's health, I a file; T tests the rod. Ctrl Enter does what
 * the control says, Ctrl Z takes back, Esc goes to the list.
 */
public final class ChecksScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final int LIVE_EVERY_MS = 250;
  private static final int LIVE_LOOKS_A_HEALTH = 8;

  private final transient ChecksActions actions;
  private final transient Refresh<ChecksView> refresh;
  private final Timer live = new Timer(LIVE_EVERY_MS, e -> look());
  private final CardLayout layout = new CardLayout();
  private final JPanel sides = new JPanel(layout);
  private final JLabel title = Text.title("Checks");
  private final JLabel details = Text.second("");
  private final Map<Character, CheckCard> byLetter = new LinkedHashMap<>();
  private final DueCard due;
  private final HealthCard health;
  private CheckCard open;
  private String said = "";
  private int looks;

  public ChecksScreen(Mailbox<ChecksView> mailbox, ChecksActions actions) {
    super("Checks");
    this.actions = actions;
    CheckCard.Speech speech = new Heard();
    health = new HealthCard(actions, speech);
    byLetter.put('l', new LineCard(Kind.LOAD, actions, speech));
    byLetter.put('g', new LineCard(Kind.GAUGE, actions, speech));
    byLetter.put('s', new SpringCard(actions, speech));
    byLetter.put('f', new FrameCard(actions, speech));
    byLetter.put('r', new RodCard(actions, speech));
    byLetter.put('h', health);
    byLetter.put('i', new FileCard(actions, speech));
    due = new DueCard(actions, subject -> turnTo(cardOf(subject)), ways(), speech);
    sides.add(due, due.getName());
    byLetter.values().forEach(card -> sides.add(card, card.getName()));
    open = due;
    fill(head("[]14[grow]", title, details), sides);
    keys();
    control().addActionListener(e -> open.press());
    refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
  }

  private List<QuietButton> ways() {
    Map<Character, String> words = new LinkedHashMap<>();
    words.put('l', "load");
    words.put('g', "gauge");
    words.put('s', "spring");
    words.put('f', "frame");
    words.put('r', "check rod");
    words.put('h', "line to the head");
    words.put('i', "bring a file in");
    List<QuietButton> ways = new ArrayList<>();
    words.forEach(
        (letter, word) -> {
          String key = String.valueOf(Character.toUpperCase(letter));
          ways.add(
              new QuietButton(
                  "checks.to." + letter, word, key, () -> turnTo(byLetter.get(letter))));
        });
    return ways;
  }

  private CheckCard cardOf(Subject subject) {
    return byLetter.get(
        switch (subject) {
          case LOAD -> 'l';
          case GAUGE -> 'g';
          case SPRING -> 's';
          case FRAME -> 'f';
          case ROD -> 'r';
        });
  }

  private void keys() {
    byLetter.forEach((letter, card) -> letter(letter, () -> fromList(() -> turnTo(card))));
    letter('t', () -> fromList(due::press));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), () -> turnTo(due));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), () -> open.press());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), () -> open.takeBack());
    key(
        KeyStroke.getKeyStroke(KeyEvent.VK_N, InputEvent.CTRL_DOWN_MASK),
        () -> {
          if (open instanceof LineCard line) {
            line.beginAnew();
          }
        });
  }

  private void fromList(Runnable run) {
    if (open.equals(due)) {
      run.run();
    }
  }

  @Override
  public void opened() {
    actions.lookAgain();
    actions.lookAtHealth();
    refresh.start();
    live.start();
    open.begin();
  }

  @Override
  public void left() {
    refresh.stop();
    live.stop();
    open.leave();
  }

  private void look() {
    open.live(actions.live());
    looks++;
    boolean showsHealth = open.equals(due) || open.equals(health);
    if (showsHealth && looks % LIVE_LOOKS_A_HEALTH == 0) {
      actions.lookAtHealth();
    }
  }

  private void show(ChecksView view) {
    due.show(view);
    byLetter.values().forEach(card -> card.show(view));
    words();
  }

  private void turnTo(CheckCard card) {
    said = "";
    if (card.equals(open)) {
      words();
      return;
    }
    open.leave();
    open = card;
    layout.show(sides, card.getName());
    open.live(actions.live());
    words();
    open.begin();
  }

  private void words() {
    title.setText(open.title());
    details.setText(open.details());
    foot().say(said.isEmpty() ? open.foot() : said, open.keys());
    control().say(open.control(), open.controlKey());
  }

  /** What the cards say comes to the foot. */
  private final class Heard implements CheckCard.Speech {
    @Override
    public void say(String line) {
      said = line;
      words();
    }

    @Override
    public void done(String line) {
      turnTo(due);
      said = line;
      words();
    }
  }
}
