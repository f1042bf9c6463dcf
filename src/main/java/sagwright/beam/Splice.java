package sagwright.beam;

/**
 * A butt splice: from {@code fromMm} to the butt end the core of shaft wood is what lies inside the
 * round and within h(x) of the centre line on both axes, h running straight from the full radius at
 * {@code fromMm} to {@code coreHalfAtButtMm} at the butt; all else inside the round is splice wood.
 * docs/contract.md, section 5.
 *
 * @param fromMm where the splice starts, from the tip end
 * @param coreHalfAtButtMm half the core's side at the butt end
 * @param densityKgM3 of the splice wood
 * @param modulusMPa of the splice wood
 * @param modulusUncertaintyPercent standard uncertainty of that modulus
 */
public record Splice(
    double fromMm,
    double coreHalfAtButtMm,
    double densityKgM3,
    double modulusMPa,
    double modulusUncertaintyPercent) {}
