package sagwright.beam;

/**
 * What one cross-section of a shaft of two woods holds, and what it gains for each mm that every
 * diameter of the shaft grows. A shaft of one wood is core alone.
 *
 * @param coreSecondMomentMm4 of the shaft wood
 * @param spliceSecondMomentMm4 of the splice wood
 * @param areaMm2 of both woods
 * @param shearFactor the energy form factor κ of the whole section
 * @param coreSecondMomentByDiameterMm3 gain of the shaft wood's second moment
 * @param spliceSecondMomentByDiameterMm3 gain of the splice wood's second moment
 * @param areaByDiameterMm gain of the area
 */
public record WoodSection(
    double coreSecondMomentMm4,
    double spliceSecondMomentMm4,
    double areaMm2,
    double shearFactor,
    double coreSecondMomentByDiameterMm3,
    double spliceSecondMomentByDiameterMm3,
    double areaByDiameterMm) {}
