package sagwright.screen.bench;

import java.util.List;
import java.util.OptionalDouble;
import sagwright.drawing.TurnedRun;
import sagwright.job.BenchShop;
import sagwright.job.GuessFirst;
import sagwright.job.GuessScale;
import sagwright.job.HandLearning;
import sagwright.job.LaidBlank;
import sagwright.job.TestedRun;
import sagwright.job.TriedOrder;
import sagwright.quantity.Figures;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.BlankState;
import sagwright.workshop.WorkshopException;

/**
 * Guess first: asks for a guess each time that a blank is laid, hides what the blank has shown
 * until it is there, and keeps it with the first run that answers. Changed by the work thread
 * alone; any thread may ask what is to be seen.
 */
final class Guessing {
  private static final double MOST_N_PER_MM = 1000;

  private final BenchShop shop;
  private final GuessFirst first;
  private volatile GuessView view; // null where nothing is guessed

  Guessing(BenchShop shop) {
    this.shop = shop;
    this.first = shop.guessFirst();
  }

  boolean isAwaited() {
    GuessView now = view;
    return now != null && now.isAwaited();
  }

  /** A blank was laid: its guess is awaited, where the shop wants guesses. */
  void laid(LaidBlank blank) throws WorkshopException {
    if (!first.isOn() || BlankState.CHECK_ROD.equals(blank.stage())) {
      view = null;
      return;
    }
    String hand = first.hand();
    view = new GuessView(true, hand, shop.wordScale().words(), null, null, first.learning(hand));
  }

  /** The words are for the usual set-up, however the shaft is turned. */
  private boolean areWordsFor(LaidBlank laid) {
    return laid.setUp().positions().turnedBy(0).equals(shop.wordScale().usual());
  }

  /** Nothing lies there any more, or a run was moved to what does: nothing is guessed. */
  void none() {
    view = null;
  }

  /**
   * A guess.
   *
   * @param typed N/mm, or a word of the shop's scale
   * @param initials whose hand; others than the last sign from now on
   * @param tried the order that the blank is tried for, null for none
   */
  void guess(String typed, String initials, LaidBlank laid, TriedOrder tried)
      throws ComplaintException, WorkshopException {
    double guessed = nPerMm(typed.trim(), laid, tried);
    HandLearning learning = view.learning();
    if (!initials.equals(view.hand())) {
      first.handTo(initials);
      learning = first.learning(initials);
    }
    view = new GuessView(false, initials, view.words(), guessed, null, learning);
  }

  private double nPerMm(String typed, LaidBlank laid, TriedOrder tried) throws ComplaintException {
    if (typed.isEmpty()) {
      throw new ComplaintException("Flex the shaft first and type what the hand says.");
    }
    OptionalDouble word =
        areWordsFor(laid)
            ? GuessScale.of(laid, tried, shop.wordScale()).nPerMm(typed)
            : OptionalDouble.empty();
    double guessed = word.isPresent() ? word.getAsDouble() : number(typed, areWordsFor(laid));
    if (!(guessed > 0 && guessed < MOST_N_PER_MM)) {
      throw new ComplaintException("guess: above 0 and below 1000 N/mm, not " + typed);
    }
    return guessed;
  }

  private double number(String typed, boolean wordsHold) throws ComplaintException {
    String bare = typed.replaceFirst("(?i)\\s*n\\s*/\\s*mm$", "");
    if (!bare.isEmpty() && Character.isLetter(bare.charAt(0))) {
      throw new ComplaintException(
          wordsHold
              ? "guess: N/mm, or one of " + String.join(", ", shop.wordScale().words())
              : "guess: N/mm alone; the words are for the usual set-up");
    }
    return Typed.number("guess", bare);
  }

  /** A run has given an answer: the guess is kept with it, and both are shown. */
  void answered(TestedRun run) throws WorkshopException {
    GuessView now = view;
    if (now == null || now.guessedNPerMm() == null || now.answerNPerMm() != null) {
      return;
    }
    first.keep(run.run(), now.guessedNPerMm());
    Estimate answer =
        new Estimate(
            run.evaluation().shaftStiffnessNPerMm(),
            run.evaluation().stiffnessStdUncertaintyNPerMm());
    view =
        new GuessView(
            false,
            now.hand(),
            now.words(),
            now.guessedNPerMm(),
            answer,
            first.learning(now.hand()));
  }

  /** What may be seen of a view. */
  BenchView over(BenchView whole) {
    GuessView now = view;
    if (now == null || whole.shaft() == null) {
      return whole;
    }
    if (!now.isAwaited()) {
      return whole.withGuess(now);
    }
    return new BenchView(
        whole.shaft(),
        whole.order(),
        whole.phase(),
        whole.phase() == Phase.READY ? "the hand first, then Space" : whole.detail(),
        BenchView.HeadReading.NONE,
        new BenchView.Curves(
            List.of(),
            null,
            whole.curves().letOffN(),
            roomThatTellsNothingMm(whole.shaft()),
            1.1 * whole.curves().letOffN()),
        null,
        null,
        whole.words(),
        veiled(whole.turns()),
        whole.safety(),
        whole.line(),
        whole.question(),
        List.of(),
        now);
  }

  /** The room for the bend goes by what the blank has shown: in tens it gives nothing away. */
  private static double roomThatTellsNothingMm(BenchView.Laid laid) {
    return 10 * Math.ceil(laid.greatestBendMm() / 10);
  }

  /** Where runs were made stays to be seen, what they gave does not. */
  private static BenchView.Turns veiled(BenchView.Turns turns) {
    return new BenchView.Turns(
        turns.nowDegrees(),
        turns.runs().stream().map(r -> new TurnedRun(r.number(), "–", r.turnDegrees())).toList(),
        "");
  }

  /** What the hand said and how far off that was; empty before there is a guess. */
  static String inWords(GuessView guess) {
    if (guess == null || guess.guessedNPerMm() == null) {
      return "";
    }
    String said = "the hand said " + Figures.rounded(guess.guessedNPerMm(), 2) + " N/mm";
    return guess.isAnswered() ? said + ": " + offInWords(guess) : said;
  }

  /** How far off an answered guess was. */
  static String offInWords(GuessView guess) {
    double off = 100 * (guess.guessedNPerMm() / guess.answerNPerMm().value() - 1);
    return Math.abs(off) < 0.5
        ? "spot on"
        : Figures.rounded(Math.abs(off), 0) + " % too " + (off > 0 ? "stiff" : "soft");
  }
}
