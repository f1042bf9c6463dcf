package sagwright.grade;

/**
 * How sure the shop wants to be before it says a word.
 *
 * @param chance above 0.5 and below 1
 */
public record Sureness(double chance) {
  /** Unless the shop sets another (docs/contract.md, section 5). */
  public static final Sureness USUAL = new Sureness(0.95);

  public Sureness {
    if (!(chance > 0.5 && chance < 1)) {
      throw new IllegalArgumentException("a sureness lies above 0.5 and below 1, not at " + chance);
    }
  }
}
