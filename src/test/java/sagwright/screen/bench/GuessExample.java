package sagwright.screen.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sagwright.job.HandLearning;

/** The bench of a shop that asks the hand first. */
public final class GuessExample {
  private static final double GUESSED_N_PER_MM = 3.4;

  private GuessExample() {}

  /** A blank lies there, whose earlier answers stay hidden. */
  public static BenchView awaited() {
    return BenchExample.in(BenchExample.ready(), Phase.READY, "the hand first, then Space")
        .withGuess(
            new GuessView(true, "TH", BenchExample.words().words(), null, null, learning(34)));
  }

  /** The bench has answered; the blank is tried for an order. */
  public static BenchView answered() {
    BenchView done = BenchExample.in(BenchExample.loaded(), Phase.DONE, "");
    return done.withGuess(guess(done, learning(35)));
  }

  /** The same without an order. */
  public static BenchView answeredForNoOrder() {
    BenchView v = answered();
    return new BenchView(
        v.shaft(),
        null,
        v.phase(),
        v.detail(),
        v.reading(),
        v.curves(),
        v.answer(),
        null,
        null,
        v.turns(),
        v.safety(),
        v.line(),
        null,
        v.warnings(),
        v.guess());
  }

  /** A hand's first guesses. */
  public static BenchView beginner() {
    BenchView v = answered();
    return v.withGuess(guess(v, learning(4)));
  }

  private static GuessView guess(BenchView view, HandLearning learning) {
    return new GuessView(
        false, "TH", List.of(), GUESSED_N_PER_MM, view.answer().stiffnessNPerMm(), learning);
  }

  /** Invented guesses, at first towards the middle and wide, later neither so much. */
  public static HandLearning learning(int guesses) {
    Random random = new Random(17);
    Instant first = Instant.parse("2026-03-02T09:00:00Z");
    List<HandLearning.Felt> felt = new ArrayList<>();
    for (int i = 0; i < guesses; i++) {
      double fresh = Math.exp(-i / 12.0);
      double answer = 2.4 + 2.6 * random.nextDouble();
      double leaning = (0.1 + 0.35 * fresh) * Math.log(3.6 / answer);
      double guessed = answer * Math.exp(leaning + (0.03 + 0.11 * fresh) * random.nextGaussian());
      felt.add(
          new HandLearning.Felt(
              first.plus(Duration.ofDays(7L * i)), "25-" + (100 + i), guessed, answer));
    }
    return new HandLearning("TH", felt);
  }
}
