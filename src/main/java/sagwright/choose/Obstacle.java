package sagwright.choose;

import java.util.Locale;
import sagwright.finish.Cut;

/** Why a blank cannot serve an order at all. There are no other reasons. */
public sealed interface Obstacle {
  String inWords();

  /** Nothing is known of its stiffness. */
  record NoRun() implements Obstacle {
    @Override
    public String inWords() {
      return "no run that gave an answer";
    }
  }

  /** The finished round does not lie inside it. */
  record DoesNotFit(Cut cut) implements Obstacle {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "does not fit: %.3g mm short of the finished round at %.0f mm",
          -cut.leastSpareMm(),
          cut.leastSpareAtMm());
    }
  }
}
