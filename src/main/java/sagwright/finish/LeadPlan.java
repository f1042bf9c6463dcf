package sagwright.finish;

import java.util.Locale;

/**
 * The lead that brings the mass and balance asked, or comes nearest.
 *
 * @param lead null where none comes nearest
 * @param got with that lead
 * @param aim what was asked
 */
public record LeadPlan(Weight lead, MassAndBalance got, LeadAim aim) {
  /** Of a gram or a millimetre: less than any maker can weigh or measure. */
  private static final double NOTHING = 1e-3;

  /** Whether mass and balance are what was asked, to a thousandth of a gram and a millimetre. */
  public boolean isReached() {
    return Math.abs(massOffG()) <= NOTHING && Math.abs(balanceOffMm()) <= NOTHING;
  }

  /** Above 0 where the shaft comes out too heavy. */
  public double massOffG() {
    return got.massG() - aim.massG();
  }

  /** Above 0 where it balances too far from the butt. */
  public double balanceOffMm() {
    return got.balanceFromButtMm() - aim.balanceFromButtMm();
  }

  /** The plan as one line for people. */
  public String inWords() {
    String where =
        lead == null
            ? "no lead"
            : String.format(
                Locale.ROOT,
                "a lead of %.1f mm from %.1f to %.1f mm",
                lead.diameterMm(),
                lead.fromMm(),
                lead.toMm());
    if (isReached()) {
      return where + " brings the weight and the balance";
    }
    return String.format(
        Locale.ROOT,
        "no lead in this bore brings both; nearest comes %s: %.1f g too %s, balance %.1f mm too %s"
            + " the butt",
        where,
        Math.abs(massOffG()),
        massOffG() > 0 ? "heavy" : "light",
        Math.abs(balanceOffMm()),
        balanceOffMm() > 0 ? "far from" : "near");
  }
}
