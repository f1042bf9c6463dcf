package sagwright.wood;

/**
 * The grain of a blank as somebody has looked at it. No figure of the program rests on it: it is
 * what the eye adds to the bench.
 *
 * @param linesPerCm growth rings a centimetre, counted across an end; null where not counted
 * @param runOut whether the grain runs along the shaft; null where not looked for
 * @param looks what else there is to see: knots, colour, flame; null for nothing
 */
public record Grain(Double linesPerCm, RunOut runOut, String looks) {
  public Grain {
    if (linesPerCm != null && !(linesPerCm > 0 && linesPerCm < Double.MAX_VALUE)) {
      throw new IllegalArgumentException("grain lines must be above 0, not " + linesPerCm);
    }
  }

  /** Nothing was looked at. */
  public static final Grain UNSEEN = new Grain(null, null, null);

  /** Whether the grain leaves the shaft at its side: there it splits first. */
  public enum RunOut {
    STRAIGHT("straight"),
    SLIGHT("slight run-out"),
    RUNS_OUT("runs out");

    private final String inWords;

    RunOut(String inWords) {
      this.inWords = inWords;
    }

    public String inWords() {
      return inWords;
    }
  }

  public boolean isUnseen() {
    return equals(UNSEEN);
  }
}
