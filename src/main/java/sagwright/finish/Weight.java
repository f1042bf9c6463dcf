package sagwright.finish;

/**
 * A cylinder let into the centre line, for mass, balance and frequency alone. It displaces the wood
 * that lies there.
 *
 * @param fromMm its end nearer the tip, from the tip end of the finished shaft
 * @param toMm its end nearer the butt
 */
public record Weight(double fromMm, double toMm, double diameterMm, double densityKgM3) {}
