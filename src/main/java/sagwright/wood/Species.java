package sagwright.wood;

/**
 * Published values of one wood at 12 % moisture, as a row of {@code species.csv} has them.
 *
 * @param name as the trade says it, "European ash"
 * @param latin botanical name
 * @param density12KgM3 density at 12 % moisture in kg/m³; null where none is published
 * @param modulus12MPa modulus of elasticity in MPa, of small clear beams with shear left in; null
 *     where none is published
 * @param bendingStrength12MPa modulus of rupture in MPa; null where none is published
 * @param modulusToShearRatio E along the grain over G
 * @param ratio12ToGreen modulus at 12 % over modulus green
 * @param intersectionMoisturePercent Mp, the moisture above which the modulus no longer changes
 *     (Wood Handbook, Table 5-13)
 * @param basis what was assumed where a value is not published for this wood itself
 */
public record Species(
    String name,
    String latin,
    Double density12KgM3,
    Double modulus12MPa,
    Double bendingStrength12MPa,
    double modulusToShearRatio,
    double ratio12ToGreen,
    double intersectionMoisturePercent,
    String basis) {}
