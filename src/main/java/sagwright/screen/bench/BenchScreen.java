package sagwright.screen.bench;

import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Sentence;

/**
 * The bench. Space begins and ends a test, Esc breaks it off; B goes to the tag, O to the order, T
 * turns the shaft, H types in a run, W shows what stands behind the ±, S what all runs show
 * together, F what the finished cue will be, R takes down how far the shaft is off straight, G
 * shows how the hand learns; a figure makes a series of so many runs.
 */
public final class BenchScreen extends Page {
  private static final long serialVersionUID = 1L;

  private static final String HOW_TO_TYPE =
      "Enter goes on.  Enter on an empty line, or Ctrl Enter, keeps it.";
  private static final String WHAT_MAY_BE_TYPED =
      "A comma does for the point; other units may be typed: 1 kg, 18 oz, 0.1 in.";
  private static final double QUARTER_TURN = 90;

  private final transient BenchActions actions;
  private final transient Refresh<BenchView> refresh;
  private final transient Tones tones = new Tones();
  private final transient Pedal pedal = new Pedal();
  private final CardLayout cards = new CardLayout();
  private final JPanel sides = new JPanel(cards);
  private final BenchHead head;
  private final BenchBody live;
  private final BehindPanel behind;
  private final HandReadForm hand;
  private final SurveyPanel survey;
  private final BowForm bow;
  private final GuessForm guess;
  private final LearningPanel learning;
  private final FinishedPanel finished;
  private transient BenchView view;
  private transient BenchView.Question asked;
  private BenchSide side = BenchSide.LIVE;
  private String complaint = "";

  public BenchScreen(Mailbox<BenchView> mailbox, BenchActions actions) {
    super("Bench");
    this.actions = actions;
    this.view = mailbox.newest();
    this.head = new BenchHead(actions, this::space, this::requestFocusInWindow, this::toWork);
    this.guess = new GuessForm(actions, this::space, this::complain);
    this.live =
        new BenchBody(
            new BenchBody.Ways(
                this::turnOn,
                () -> turnTo(BenchSide.HAND),
                () -> turnTo(BenchSide.BEHIND),
                () -> turnTo(BenchSide.SURVEY),
                () -> turnTo(BenchSide.BOW),
                () -> turnTo(BenchSide.LEARNING),
                () -> turnTo(BenchSide.FINISHED)),
            guess);
    this.behind = new BehindPanel(this::toLive);
    this.hand = new HandReadForm(actions, this::toLive, this::complain);
    this.survey = new SurveyPanel(this::toLive, this::measureNext, this::setUpAsUsual);
    this.bow = new BowForm(actions, this::toLive, this::complain);
    this.learning = new LearningPanel(this::toLive);
    this.finished = new FinishedPanel(this::toLive);
    sides.add(live, BenchSide.LIVE.name());
    sides.add(hand, BenchSide.HAND.name());
    sides.add(behind, BenchSide.BEHIND.name());
    sides.add(survey, BenchSide.SURVEY.name());
    sides.add(bow, BenchSide.BOW.name());
    sides.add(learning, BenchSide.LEARNING.name());
    sides.add(finished, BenchSide.FINISHED.name());
    fill(head, sides);
    keys();
    control().addActionListener(e -> press());
    this.refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
  }

  @Override
  public void opened() {
    refresh.start();
    toWork();
  }

  @Override
  public void left() {
    refresh.stop();
  }

  /** Ends the sound thread; for when the program ends. */
  public void close() {
    tones.close();
  }

  private void show(BenchView next) {
    Phase before = view.phase();
    boolean isNewlyLaid = next.shaft() != null && !next.shaft().isSameBlankAs(view.shaft());
    boolean handIsAsked = next.awaitsGuess() != view.awaitsGuess();
    view = next;
    head.show(next);
    live.show(next);
    behind.show(next);
    survey.show(next);
    learning.show(next);
    finished.show(next);
    footSays();
    question(next.question());
    controls();
    if ((isNewlyLaid || handIsAsked) && side == BenchSide.LIVE && !head.isOrdering()) {
      toWork();
    }
    if (next.phase() != before) {
      tones.play(next.phase());
    }
  }

  /** While a run is typed in, the foot says how, or what is wrong with it. */
  private void footSays() {
    if (side.isForm()) {
      foot().say(complaint.isEmpty() ? HOW_TO_TYPE : complaint, WHAT_MAY_BE_TYPED);
    } else {
      boolean wrongGuess = view.awaitsGuess() && !complaint.isEmpty();
      foot().say(wrongGuess ? complaint : view.safety(), footLine(view));
    }
  }

  private void complain(String words) {
    complaint = words;
    footSays();
  }

  private static String footLine(BenchView view) {
    String warning = view.warnings().isEmpty() ? "" : Sentence.of(view.warnings().get(0)) + "  ";
    return warning + view.line();
  }

  private void question(BenchView.Question next) {
    if (next == null ? asked == null : next.equals(asked)) {
      return;
    }
    asked = next;
    ask(next == null ? null : new QuestionStrip(next, actions));
  }

  private void controls() {
    if (side.isForm()) {
      control().say(side == BenchSide.HAND ? "Keep run" : "Keep bow", "Enter");
      control().setEnabled(true);
      return;
    }
    Phase phase = view.phase();
    if (view.awaitsGuess() && phase.canBegin()) {
      control().say("Guess", "Enter");
      control().setEnabled(true);
      return;
    }
    control().say("Test", phase.isRunning() ? "Space ends it" : "Space");
    control().setEnabled(phase.isRunning() || phase.canBegin());
  }

  private void keys() {
    // the control does not take Space for itself: it is the test's from anywhere on the page
    control().getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), "none");
    control().getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true), "none");
    key(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), this::space);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true), pedal::letGo);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::escape);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), actions::undo);
    letter('b', head::focusTag);
    letter('o', head::focusOrder);
    letter('t', this::turnOn);
    letter('h', () -> turnTo(BenchSide.HAND));
    letter('w', () -> turnTo(BenchSide.BEHIND));
    letter('s', () -> turnTo(BenchSide.SURVEY));
    letter('r', () -> turnTo(BenchSide.BOW));
    letter('g', () -> turnTo(BenchSide.LEARNING));
    letter('f', () -> turnTo(BenchSide.FINISHED));
    key(
        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, KeyEvent.CTRL_DOWN_MASK),
        () -> {
          if (side.isForm()) {
            press();
          }
        });
    letter('m', this::measureNext);
    letter('u', this::setUpAsUsual);
    for (int runs = 1; runs <= BenchSeries.MOST_RUNS; runs++) {
      int many = runs;
      key(KeyStroke.getKeyStroke((char) ('0' + runs)), () -> makeSeriesOf(many));
    }
    for (BenchActions.Choice choice : BenchActions.Choice.values()) {
      letter(keyOf(choice), () -> answer(choice));
    }
  }

  /** The letters that answer a question; its offers name the same. */
  static char keyOf(BenchActions.Choice choice) {
    return switch (choice) {
      case KEEP -> 'y';
      case MOVE_THERE -> 'i';
      case MOVE -> 'n';
      case SET_ASIDE -> 'a';
      case LATER -> 'l';
    };
  }

  private void space() {
    if (pedal.press(side == BenchSide.LIVE)) {
      if (view.awaitsGuess() && view.phase().canBegin()) {
        guess.keep(actions::test); // a foot on the pedal: the hands stay on the shaft
      } else {
        press();
      }
    }
  }

  private void press() {
    if (side == BenchSide.HAND) {
      hand.keep();
    } else if (side == BenchSide.BOW) {
      bow.keep();
    } else if (view.awaitsGuess()) {
      toLive();
      guess.keep(() -> {});
    } else if (view.phase().isRunning() || view.phase().canBegin()) {
      toLive();
      actions.test();
    }
  }

  private void escape() {
    if (side != BenchSide.LIVE) {
      toLive();
    } else if (view.phase().isRunning()) {
      actions.breakOff();
    } else {
      toWork();
    }
  }

  private void turnOn() {
    if (side == BenchSide.LIVE && view.shaft() != null && !view.phase().isRunning()) {
      actions.turnTo((view.turns().nowDegrees() + QUARTER_TURN) % 360);
    }
  }

  private void makeSeriesOf(int runs) {
    if (side == BenchSide.LIVE && view.shaft() != null && !view.phase().isRunning()) {
      actions.makeSeriesOf(runs);
    }
  }

  private void measureNext() {
    boolean proposes = view.answer() != null && !view.answer().survey().next().isEmpty();
    if (side == BenchSide.SURVEY && proposes) {
      actions.setUp(view.answer().survey().next().get(0).setUp());
      toLive();
    }
  }

  private void setUpAsUsual() {
    if (side == BenchSide.SURVEY) {
      actions.setUp(null);
      toLive();
    }
  }

  private void answer(BenchActions.Choice choice) {
    boolean offered = asked != null && asked.offers().stream().anyMatch(o -> o.choice() == choice);
    if (offered) {
      actions.answer(choice);
    }
  }

  private void toLive() {
    turnTo(BenchSide.LIVE);
  }

  private void turnTo(BenchSide to) {
    boolean mayLeave = !view.phase().isRunning() || to == BenchSide.LIVE;
    if (to == side || !mayLeave || !to.isThereIn(view)) {
      return;
    }
    side = to;
    complaint = "";
    cards.show(sides, to.name());
    controls();
    footSays();
    if (to == BenchSide.HAND) {
      hand.begin(view.shaft().safeLoadN());
    } else if (to == BenchSide.BOW) {
      bow.begin();
    } else {
      if (to == BenchSide.BEHIND) {
        actions.lookBehind();
      }
      toWork();
    }
  }

  /** Where work goes on: at the control, or at the tag while nothing lies there. */
  private void toWork() {
    if (view.shaft() == null) {
      head.focusTag();
    } else if (view.awaitsGuess() && side == BenchSide.LIVE) {
      guess.focus();
    } else {
      control().requestFocusInWindow();
    }
  }
}
