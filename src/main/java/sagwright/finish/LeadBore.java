package sagwright.finish;

/**
 * Where a lead may go: a bore of one diameter along the centre line.
 *
 * @param fromMm the end of the bore nearer the tip, from the tip end of the finished shaft
 * @param toMm the end nearer the butt
 * @param diameterMm of the bore and of the lead in it
 * @param densityKgM3 of the lead; it must be above that of the wood it displaces
 */
public record LeadBore(double fromMm, double toMm, double diameterMm, double densityKgM3) {
  /** Lead, rolled (general engineering tables). */
  public static final double LEAD_KG_M3 = 11340;

  Weight filled(double fromMm, double toMm) {
    return new Weight(fromMm, toMm, diameterMm, densityKgM3);
  }
}
