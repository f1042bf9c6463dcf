package sagwright.check;

/**
 * The acceleration of free fall at the bench, which turns a known mass into a known load.
 *
 * @param metresPerSecondSquared between 9.7 and 9.9: nowhere on Earth lies outside
 */
public record LocalGravity(double metresPerSecondSquared) {
  private static final double LEAST = 9.7;
  private static final double GREATEST = 9.9;

  /** Geodetic Reference System 1980 (Moritz, Journal of Geodesy 74, 2000): normal gravity, m/s². */
  private static final double GRS_80_EQUATOR_M_S2 = 9.7803267715;

  /** The same: k = (b·γp − a·γe)/(a·γe) of Somigliana's formula. */
  private static final double GRS_80_SOMIGLIANA_K = 0.001931851353;

  /** The same: first eccentricity squared. */
  private static final double GRS_80_ECCENTRICITY_SQUARED = 0.00669438002290;

  /** Free-air gradient, m/s² a metre of height. */
  private static final double FREE_AIR_PER_METRE = 3.086e-6;

  /** Conventional density of air, kg/m³, and of weights: OIML R 111 and D 28. */
  private static final double AIR_KG_M3 = 1.2;

  private static final double WEIGHTS_KG_M3 = 8000;

  /**
   * @throws IllegalArgumentException outside 9.7…9.9 m/s²; its message is one line for people
   */
  /** Standard gravity, 9.80665 m/s² by definition (3rd CGPM, 1901): where no place is set. */
  public static final LocalGravity STANDARD_CGPM_1901 = new LocalGravity(9.80665);

  public LocalGravity {
    if (!(metresPerSecondSquared >= LEAST && metresPerSecondSquared <= GREATEST)) {
      throw new IllegalArgumentException(
          "gravity "
              + metresPerSecondSquared
              + " m/s² lies outside "
              + LEAST
              + " to "
              + GREATEST
              + ", the range found on Earth");
    }
  }

  /**
   * By Somigliana's formula on the ellipsoid of GRS 80, less 3.086e-6 m/s² a metre. Local rock may
   * make it wrong by 1e-3 m/s² in high mountains, a tenth of that elsewhere.
   *
   * @throws IllegalArgumentException off the Earth; its message is one line for people
   */
  public static LocalGravity at(Place place) {
    double sin = Math.sin(Math.toRadians(place.latitudeDegrees()));
    double normal =
        GRS_80_EQUATOR_M_S2
            * (1 + GRS_80_SOMIGLIANA_K * sin * sin)
            / Math.sqrt(1 - GRS_80_ECCENTRICITY_SQUARED * sin * sin);
    return new LocalGravity(normal - FREE_AIR_PER_METRE * place.altitudeM());
  }

  /** The load in N that a mass makes in air, g reduced by the air that the weight displaces. */
  public double loadN(double massG) {
    return massG / 1000 * metresPerSecondSquared * (1 - AIR_KG_M3 / WEIGHTS_KG_M3);
  }

  /**
   * Where the bench stands.
   *
   * @param latitudeDegrees −90 to 90
   * @param altitudeM above the sea, −500 to 9000
   */
  public record Place(double latitudeDegrees, double altitudeM) {
    /**
     * @throws IllegalArgumentException off the Earth; its message is one line for people
     */
    public Place {
      if (!(Math.abs(latitudeDegrees) <= 90)) {
        throw new IllegalArgumentException(
            "latitude " + latitudeDegrees + "° lies outside -90 to 90");
      }
      if (!(altitudeM >= -500 && altitudeM <= 9000)) {
        throw new IllegalArgumentException(
            "altitude " + altitudeM + " m lies outside -500 to 9000");
      }
    }
  }
}
