package sagwright.choose;

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

  /** The finished round is longer than what is left of it. */
  record SticksOut(double byMm) implements Obstacle {
    @Override
    public String inWords() {
      return "does not fit: sticks out of the blank by " + toHundredths(byMm) + " mm";
    }
  }

  /** The finished round is thicker than it is. */
  record DoesNotFit(Cut cut) implements Obstacle {
    @Override
    public String inWords() {
      return "does not fit: "
          + toHundredths(-cut.leastSpareMm())
          + " mm short of the finished round at "
          + Math.round(cut.leastSpareAtMm())
          + " mm";
    }
  }

  /** By hand: of a rack of ten thousand all may be too thin. What is missing is never 0.00. */
  private static String toHundredths(double missingMm) {
    long hundredths = Math.max(1, Math.round(missingMm * 100));
    String behindPoint = Long.toString(100 + hundredths % 100).substring(1);
    return hundredths / 100 + "." + behindPoint;
  }
}
