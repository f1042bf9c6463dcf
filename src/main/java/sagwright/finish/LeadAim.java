package sagwright.finish;

/**
 * The mass and the balance that a lead is to bring, and how far off each may be: where both cannot
 * be had, a miss counts in shares of these.
 *
 * @param massToleranceG above 0
 * @param balanceToleranceMm above 0
 */
public record LeadAim(
    double massG, double massToleranceG, double balanceFromButtMm, double balanceToleranceMm) {
  public LeadAim {
    if (!(massToleranceG > 0 && balanceToleranceMm > 0)) {
      throw new IllegalArgumentException("tolerances to weigh misses by are above 0");
    }
  }

  /** The square of the miss, in tolerances. */
  double missOf(MassAndBalance got) {
    double mass = (got.massG() - massG) / massToleranceG;
    double balance = (got.balanceFromButtMm() - balanceFromButtMm) / balanceToleranceMm;
    return mass * mass + balance * balance;
  }
}
