package sagwright.finish;

/**
 * The lead that brings the mass and balance asked, or comes nearest.
 *
 * @param lead null where none comes nearest
 * @param got with that lead
 * @param isReached whether mass and balance are what was asked
 * @param aim what was asked
 */
public record LeadPlan(Weight lead, MassAndBalance got, boolean isReached, LeadAim aim) {
  /** Above 0 where the shaft comes out too heavy. */
  public double massOffG() {
    return got.massG() - aim.massG();
  }

  /** Above 0 where it balances too far from the butt. */
  public double balanceOffMm() {
    return got.balanceFromButtMm() - aim.balanceFromButtMm();
  }
}
