package sagwright.screen.bench;

import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Zoom;

/** The live bench: the stage above; plot, answer and butt end below, each in its place. */
final class BenchBody extends JPanel implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;

  /** Of the body's height at zoom 1: 357 of 650, as the stage was drawn. */
  private static final double STAGE_SHARE = 0.55;

  private static final int TURNS_WIDTH = 236;
  private static final int ANSWER_WIDTH = 396;
  private static final int GAP = 40;
  private static final int ACTIONS = 44;
  private static final String HAND = "the hand";

  private final StagePicture stage = new StagePicture();
  private final PlotPicture plot = new PlotPicture();
  private final AnswerPicture answer = new AnswerPicture();
  private final ButtPicture turns = new ButtPicture();
  private final QuietButton turn;
  private final QuietButton handRead;
  private final QuietButton behind;
  private final QuietButton survey;
  private final QuietButton bow;
  private final QuietButton learning;
  private final GuessForm guess;
  private final QuietButton finished;
  private double zoom = 1;

  /** What its small actions do. */
  record Ways(
      Runnable turnOn,
      Runnable typeIn,
      Runnable lookBehind,
      Runnable survey,
      Runnable roll,
      Runnable learn,
      Runnable finished) {}

  /**
   * @param guess stands where the answer will, while the hand is asked
   */
  BenchBody(Ways ways, GuessForm guess) {
    this.guess = guess;
    setLayout(null);
    setName("bench.body");
    turn = new QuietButton("bench.turn", "turn by 90°", "T", ways.turnOn());
    handRead = new QuietButton("bench.handRead", "type in a run", "H", ways.typeIn());
    behind = new QuietButton("bench.behind", "± is 95 %: why", "W", ways.lookBehind());
    survey = new QuietButton("bench.survey", "all runs", "S", ways.survey());
    bow = new QuietButton("bench.bow", "bow", "R", ways.roll());
    learning = new QuietButton("bench.learning", HAND, "G", ways.learn());
    finished = new QuietButton("bench.finished", "the cue", "F", ways.finished());
    for (JComponent part :
        new JComponent[] {
          stage, finished, survey, bow, learning, guess, plot, behind, answer, turns, turn, handRead
        }) {
      add(part);
    }
  }

  void show(BenchView view) {
    stage.show(view);
    plot.show(view);
    answer.show(view);
    turns.show(view);
    turn.setEnabled(view.shaft() != null && !view.phase().isRunning());
    handRead.setEnabled(view.shaft() != null && !view.phase().isRunning() && !view.awaitsGuess());
    behind.setVisible(view.answer() != null);
    survey.setVisible(view.answer() != null);
    finished.setVisible(view.forecast() != null);
    bow.setVisible(view.shaft() != null);
    bow.setEnabled(!view.phase().isRunning());
    guess.show(view);
    answer.setVisible(!view.awaitsGuess());
    learning.setVisible(view.guess() != null);
    boolean guessed = view.guess() != null && view.guess().isAnswered();
    learning.setText(guessed ? "hand " + Guessing.offInWords(view.guess()) : HAND);
    learning.setEnabled(!view.phase().isRunning());
  }

  @Override
  public void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public void doLayout() {
    int top = (int) Math.round(getHeight() * STAGE_SHARE);
    int low = getHeight() - top;
    stage.setBounds(0, 0, getWidth(), top);
    int turnsWidth = px(TURNS_WIDTH);
    int turnsLeft = getWidth() - turnsWidth;
    int spare = Math.max(0, getWidth() - px(TURNS_WIDTH + ANSWER_WIDTH + 2 * GAP + 384));
    int answerWidth = px(ANSWER_WIDTH) + spare / 3;
    int answerLeft = turnsLeft - px(GAP) - answerWidth;
    plot.setBounds(0, top, answerLeft - px(GAP + 16), low);
    int surveyWidth = survey.getPreferredSize().width;
    int bowWidth = bow.getPreferredSize().width;
    int plotEnd = answerLeft - px(GAP + 8);
    survey.setBounds(plotEnd - surveyWidth, top - px(7), surveyWidth, px(ACTIONS));
    int bowLeft = plotEnd - surveyWidth - px(8) - bowWidth;
    bow.setBounds(bowLeft, top - px(7), bowWidth, px(ACTIONS));
    int learningWidth = learning.getPreferredSize().width;
    int learningLeft = bowLeft - px(8) - learningWidth;
    learning.setBounds(learningLeft, top - px(7), learningWidth, px(ACTIONS));
    int finishedWidth = finished.getPreferredSize().width;
    int nextOfThem = learning.isVisible() ? learningLeft : bowLeft;
    finished.setBounds(nextOfThem - px(8) - finishedWidth, top - px(7), finishedWidth, px(ACTIONS));
    answer.setBounds(answerLeft, top, answerWidth, low);
    guess.setBounds(answerLeft, top, answerWidth, low);
    Dimension why = behind.getPreferredSize();
    behind.setBounds(
        answerLeft + answerWidth - why.width + px(6), top - px(7), why.width, why.height);
    turns.setBounds(turnsLeft, top, turnsWidth, low - px(ACTIONS));
    int y = top + low - px(ACTIONS);
    turn.setBounds(turnsLeft - px(6), y, turn.getPreferredSize().width, px(ACTIONS));
    int handWidth = handRead.getPreferredSize().width;
    handRead.setBounds(turnsLeft + turnsWidth - handWidth + px(6), y, handWidth, px(ACTIONS));
  }

  private int px(int atZoomOne) {
    return (int) Math.round(atZoomOne * zoom);
  }
}
