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

  /** A pedal bounces, a held key repeats: no second Space counts within so long. */
  private static final long SPACE_REST_NS = 400_000_000;

  private static final String LIVE = "live";
  private static final String HAND = "hand";
  private static final String BEHIND = "behind";
  private static final String SURVEY = "survey";
  private static final String BOW = "bow";
  private static final String LEARNING = "learning";
  private static final String FINISHED = "finished";
  private static final String HOW_TO_TYPE =
      "Enter goes on.  Enter on an empty line, or Ctrl Enter, keeps it.";
  private static final String WHAT_MAY_BE_TYPED =
      "A comma does for the point; other units may be typed: 1 kg, 18 oz, 0.1 in.";
  private static final double QUARTER_TURN = 90;

  private final transient BenchActions actions;
  private final transient Refresh<BenchView> refresh;
  private final transient Tones tones = new Tones();
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
  private String side = LIVE;
  private String complaint = "";
  private boolean spaceIsDown;
  private long lastSpaceNs = System.nanoTime() - SPACE_REST_NS;

  public BenchScreen(Mailbox<BenchView> mailbox, BenchActions actions) {
    super("Bench");
    this.actions = actions;
    this.view = mailbox.newest();
    this.head = new BenchHead(actions, this::space, this::toWork);
    this.guess = new GuessForm(actions, this::space, this::complain);
    this.live =
        new BenchBody(
            new BenchBody.Ways(
                this::turnOn,
                () -> turnTo(HAND),
                () -> turnTo(BEHIND),
                () -> turnTo(SURVEY),
                () -> turnTo(BOW),
                () -> turnTo(LEARNING),
                () -> turnTo(FINISHED)),
            guess);
    this.behind = new BehindPanel(() -> turnTo(LIVE));
    this.hand = new HandReadForm(actions, () -> turnTo(LIVE), this::complain);
    this.survey = new SurveyPanel(() -> turnTo(LIVE), this::measureNext, this::setUpAsUsual);
    this.bow = new BowForm(actions, () -> turnTo(LIVE), this::complain);
    this.learning = new LearningPanel(() -> turnTo(LIVE));
    this.finished = new FinishedPanel(() -> turnTo(LIVE));
    sides.add(live, LIVE);
    sides.add(hand, HAND);
    sides.add(behind, BEHIND);
    sides.add(survey, SURVEY);
    sides.add(bow, BOW);
    sides.add(learning, LEARNING);
    sides.add(finished, FINISHED);
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
    if ((isNewlyLaid || handIsAsked) && side.equals(LIVE)) {
      toWork();
    }
    if (next.phase() != before) {
      tones.play(next.phase());
    }
  }

  /** While a run is typed in, the foot says how, or what is wrong with it. */
  private void footSays() {
    if (isForm()) {
      foot().say(complaint.isEmpty() ? HOW_TO_TYPE : complaint, WHAT_MAY_BE_TYPED);
    } else {
      boolean wrongGuess = view.awaitsGuess() && !complaint.isEmpty();
      foot().say(wrongGuess ? complaint : view.safety(), footLine(view));
    }
  }

  private boolean isForm() {
    return side.equals(HAND) || side.equals(BOW);
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
    if (isForm()) {
      control().say(side.equals(HAND) ? "Keep run" : "Keep bow", "Enter");
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
    key(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true), () -> spaceIsDown = false);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::escape);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), actions::undo);
    letter('b', head::focusTag);
    letter('o', head::focusOrder);
    letter('t', this::turnOn);
    letter('h', () -> turnTo(HAND));
    letter('w', () -> turnTo(BEHIND));
    letter('s', () -> turnTo(SURVEY));
    letter('r', () -> turnTo(BOW));
    letter('g', () -> turnTo(LEARNING));
    letter('f', () -> turnTo(FINISHED));
    key(
        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, KeyEvent.CTRL_DOWN_MASK),
        () -> {
          if (isForm()) {
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
    long now = System.nanoTime();
    boolean bounced = spaceIsDown || now - lastSpaceNs < SPACE_REST_NS;
    spaceIsDown = true;
    if (!bounced && side.equals(LIVE)) {
      lastSpaceNs = now;
      if (view.awaitsGuess() && view.phase().canBegin()) {
        guess.keep(actions::test); // a foot on the pedal: the hands stay on the shaft
      } else {
        press();
      }
    }
  }

  private void press() {
    if (side.equals(HAND)) {
      hand.keep();
    } else if (side.equals(BOW)) {
      bow.keep();
    } else if (view.awaitsGuess()) {
      turnTo(LIVE);
      guess.keep(() -> {});
    } else if (view.phase().isRunning() || view.phase().canBegin()) {
      turnTo(LIVE);
      actions.test();
    }
  }

  private void escape() {
    if (!side.equals(LIVE)) {
      turnTo(LIVE);
    } else if (view.phase().isRunning()) {
      actions.breakOff();
    } else {
      toWork();
    }
  }

  private void turnOn() {
    if (side.equals(LIVE) && view.shaft() != null && !view.phase().isRunning()) {
      actions.turnTo((view.turns().nowDegrees() + QUARTER_TURN) % 360);
    }
  }

  private void makeSeriesOf(int runs) {
    if (side.equals(LIVE) && view.shaft() != null && !view.phase().isRunning()) {
      actions.makeSeriesOf(runs);
    }
  }

  private void measureNext() {
    boolean proposes = view.answer() != null && !view.answer().survey().next().isEmpty();
    if (side.equals(SURVEY) && proposes) {
      actions.setUp(view.answer().survey().next().get(0).setUp());
      turnTo(LIVE);
    }
  }

  private void setUpAsUsual() {
    if (side.equals(SURVEY)) {
      actions.setUp(null);
      turnTo(LIVE);
    }
  }

  private void answer(BenchActions.Choice choice) {
    boolean offered = asked != null && asked.offers().stream().anyMatch(o -> o.choice() == choice);
    if (offered) {
      actions.answer(choice);
    }
  }

  private void turnTo(String to) {
    boolean mayLeave = !view.phase().isRunning() || to.equals(LIVE);
    boolean hasIt =
        to.equals(LIVE)
            || (to.equals(HAND) && view.shaft() != null && !view.awaitsGuess())
            || (to.equals(BOW) && view.shaft() != null)
            || (to.equals(LEARNING) && view.guess() != null)
            || ((to.equals(BEHIND) || to.equals(SURVEY)) && view.answer() != null)
            || (to.equals(FINISHED) && view.forecast() != null);
    if (to.equals(side) || !mayLeave || !hasIt) {
      return;
    }
    side = to;
    complaint = "";
    cards.show(sides, to);
    controls();
    footSays();
    if (to.equals(HAND)) {
      hand.begin(view.shaft().safeLoadN());
    } else if (to.equals(BOW)) {
      bow.begin();
    } else {
      if (to.equals(BEHIND)) {
        actions.lookBehind();
      }
      toWork();
    }
  }

  /** Where work goes on: at the control, or at the tag while nothing lies there. */
  private void toWork() {
    if (view.shaft() == null) {
      head.focusTag();
    } else if (view.awaitsGuess() && side.equals(LIVE)) {
      guess.focus();
    } else {
      control().requestFocusInWindow();
    }
  }
}
