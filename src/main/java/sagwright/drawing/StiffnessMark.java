package sagwright.drawing;

/**
 * A shaft on the stiffness line.
 *
 * @param stiffnessNPerMm where its dot stands
 * @param halfWidth95NPerMm half its whisker, 95 %
 * @param hollow a forecast that is not to be acted on, or a shaft that cannot serve
 */
public record StiffnessMark(double stiffnessNPerMm, double halfWidth95NPerMm, boolean hollow) {}
