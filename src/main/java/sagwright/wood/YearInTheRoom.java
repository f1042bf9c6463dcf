package sagwright.wood;

/**
 * The driest and the dampest air that a finished cue meets in a year, and what each makes of its
 * wood.
 */
public record YearInTheRoom(RoomAir dryWinter, RoomAir dampSummer) {
  /** A heated room in frost and an unheated one in a wet summer: common practice, no source. */
  public static final YearInTheRoom COMMON =
      new YearInTheRoom(new RoomAir(20, 30), new RoomAir(22, 75));

  /**
   * What the year makes of a modulus, the wood given time to settle.
   *
   * @param modulusAt12MPa null where unknown
   */
  public SeasonalModulus of(MoistureAdjustment wood, Double modulusAt12MPa) {
    double winter = dryWinter.equilibriumMoisturePercent();
    double summer = dampSummer.equilibriumMoisturePercent();
    return new SeasonalModulus(
        winter,
        wood.modulusAt(winter, modulusAt12MPa),
        summer,
        wood.modulusAt(summer, modulusAt12MPa));
  }

  /**
   * @param dryWinterMPa null where the moisture lies outside the formula's range
   * @param dampSummerMPa null likewise
   */
  public record SeasonalModulus(
      double dryWinterMoisturePercent,
      Double dryWinterMPa,
      double dampSummerMoisturePercent,
      Double dampSummerMPa) {}
}
