package sagwright.run;

import sagwright.uncertainty.Warning;

/** What a reader of a stiffness should know about the run behind it. */
public sealed interface RunWarning extends Warning {

  /**
   * The branch bends more than its noise allows: the line was fitted where it is straightest.
   *
   * @param slopeChangePercent how far the slope may be off if the bend goes on to the rest, in
   *     percent
   */
  record BranchBends(double fromN, double toN, double greatestN, double slopeChangePercent)
      implements RunWarning {
    @Override
    public String inWords() {
      return "the loading branch bends more than its noise allows: fitted where it is straightest, "
          + "from "
          + Figures.of(fromN)
          + " to "
          + Figures.of(toN)
          + " N of "
          + Figures.of(greatestN)
          + " N; nearer to the rest the slope may differ by "
          + Figures.of(slopeChangePercent)
          + " %";
    }
  }

  /** The deflection jumps on the way up; the line was fitted on one side of the jump. */
  record Slipped(double atLoadN, double jumpMm, double fromN, double toN) implements RunWarning {
    @Override
    public String inWords() {
      return "at "
          + Figures.of(atLoadN)
          + " N the deflection jumps by "
          + Figures.of(jumpMm)
          + " mm, as if the shaft or the gauge had slipped: fitted on one side of it, from "
          + Figures.of(fromN)
          + " to "
          + Figures.of(toN)
          + " N";
    }
  }

  /** The lower part runs steeper than the line, but the scatter is too great to call it a bend. */
  record SteeperBelow(double percent) implements RunWarning {
    @Override
    public String inWords() {
      return "from 10 to 40 % of the greatest load the branch is "
          + Figures.of(percent)
          + " % steeper than the line, though not clearly more than its scatter allows";
    }
  }

  /** The pairs of a hand-read run bend more than their scatter allows; all of them were kept. */
  record PairsBend(double slopeChangePercent) implements RunWarning {
    @Override
    public String inWords() {
      return "the pairs lie on a bend, not on a line: from the least load to the greatest the slope"
          + " changes by about "
          + Figures.of(slopeChangePercent)
          + " %";
    }
  }

  /** A hand-read pair that lies off the line of all the others. */
  record PairSetAside(double loadN, double deflectionMm, double offMm) implements RunWarning {
    @Override
    public String inWords() {
      return "the pair "
          + Figures.of(loadN)
          + " N, "
          + Figures.of(deflectionMm)
          + " mm lies "
          + Figures.of(Math.abs(offMm))
          + " mm off the line of the others and was set aside as misread";
    }
  }

  /** The run begins with the load already rising. */
  record NoRest() implements RunWarning {
    @Override
    public String inWords() {
      return "the run has no rest before loading: loads are reckoned from its first readings";
    }
  }

  /** Repeated old readings of a slow gauge or load cell were left out. */
  record StaleReadings(String which, int leftOut, int samples) implements RunWarning {
    @Override
    public String inWords() {
      return "the "
          + which
          + " is slower than the run: "
          + leftOut
          + " of "
          + samples
          + " samples repeat an old reading and were left out";
    }
  }

  /** Many samples inside the window were wild. */
  record ManyWild(int setAside, int inWindow) implements RunWarning {
    @Override
    public String inWords() {
      return setAside
          + " of "
          + inWindow
          + " samples in the fit window are wild and were set aside";
    }
  }

  /** The readings scatter more than their stated uncertainties let expect. */
  record ScattersMore(double factor) implements RunWarning {
    @Override
    public String inWords() {
      return "the readings scatter "
          + Figures.of(factor)
          + " times as much as the instrument's stated uncertainties let expect";
    }
  }

  /**
   * The readings wander slowly, or one lags behind the other: many samples do not average it out.
   */
  record ScattersSlowly(double factor) implements RunWarning {
    @Override
    public String inWords() {
      return "load and gauge drift apart slowly and back, which many samples do not average out:"
          + " the line's uncertainty was taken "
          + Figures.of(factor)
          + " times as large";
    }
  }

  /** The load fell off while the deflection went on rising. */
  record Broke(double atLoadN) implements RunWarning {
    @Override
    public String inWords() {
      return "past "
          + Figures.of(atLoadN)
          + " N the load falls while the deflection goes on rising: the piece may have cracked or "
          + "slipped";
    }
  }
}
