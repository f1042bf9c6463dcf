package sagwright.beam;

/**
 * The modulus of the shaft wood that was found for a spliced shaft.
 *
 * @param modulusMPa of the shaft wood
 * @param byMmPerN its derivative by the deflection per load, in MPa per mm/N (below 0)
 * @param bySpliceModulus its derivative by the splice wood's modulus (below 0)
 */
public record SplicedModulus(double modulusMPa, double byMmPerN, double bySpliceModulus) {}
