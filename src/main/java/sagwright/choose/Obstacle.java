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

  /** The finished round does not lie inside it: it is too long for it, or else too thick. */
  record DoesNotFit(Cut cut) implements Obstacle {
    @Override
    public String inWords() {
      return cut.sticksOutMm() > 0
          ? "does not fit: sticks out of the blank by " + toHundredths(cut.sticksOutMm()) + " mm"
          : "does not fit: "
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
