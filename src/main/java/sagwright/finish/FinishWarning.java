package sagwright.finish;

import java.util.Locale;
import sagwright.uncertainty.Warning;

/** What the reader of a forecast should know. */
public sealed interface FinishWarning extends Warning {
  /** The blank was not weighed. */
  record NotWeighed() implements FinishWarning {
    @Override
    public String inWords() {
      return "mass, balance and frequency cannot be told: the blank has no mass";
    }
  }

  /** The finished round does not lie inside the blank: it is too long for it, or else too thick. */
  record DoesNotFit(Cut cut) implements FinishWarning {
    @Override
    public String inWords() {
      return "the finished round does not fit: "
          + (cut.sticksOutMm() > 0
              ? String.format(
                  Locale.ROOT,
                  "it sticks out of the blank's butt end by %.1f mm",
                  cut.sticksOutMm())
              : String.format(
                  Locale.ROOT,
                  "%.3g mm are missing at %.1f mm from the tip",
                  -cut.leastSpareMm(),
                  cut.leastSpareAtMm()));
    }
  }

  /** The blank has splice wood in it, so that its mean density is not quite the shaft wood's. */
  record SplicedAlready() implements FinishWarning {
    @Override
    public String inWords() {
      return "mass, balance and frequency take the mean density of a blank that is spliced already"
          + " for that of its shaft wood";
    }
  }

  /** The blank has splice wood in it that the finish plan does not speak of. */
  record SpliceNotPlanned() implements FinishWarning {
    @Override
    public String inWords() {
      return "the blank is spliced already, but the order has no splice: stiffness is forecast as"
          + " if all of it were shaft wood";
    }
  }
}
