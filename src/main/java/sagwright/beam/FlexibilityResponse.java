package sagwright.beam;

/**
 * How far a shaft bends per load, with what changes it.
 *
 * @param mmPerN deflection per load
 * @param byCoreModulus its derivative by the shaft wood's modulus, in mm/N per MPa
 * @param byDiameter by one error common to all diameters, in 1/N
 * @param bySpliceModulus by the splice wood's modulus, in mm/N per MPa
 */
public record FlexibilityResponse(
    double mmPerN, double byCoreModulus, double byDiameter, double bySpliceModulus) {}
