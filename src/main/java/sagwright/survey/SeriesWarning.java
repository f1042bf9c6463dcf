package sagwright.survey;

import sagwright.uncertainty.Warning;

/** What the reader of a series of repeats should know. */
public sealed interface SeriesWarning extends Warning {
  /** A run, counted from 0, that does not count. */
  record RunSetAside(int run, int runs) implements SeriesWarning {
    @Override
    public String inWords() {
      return "run "
          + (run + 1)
          + " of "
          + runs
          + " stands out and does not count; it stays on the record";
    }
  }

  /** As many parameters as runs. */
  record GrainOrBadRun() implements SeriesWarning {
    @Override
    public String inWords() {
      return "the modulus changes with the turn, by grain or by one bad run: one more run would"
          + " tell";
    }
  }
}
