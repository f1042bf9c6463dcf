package sagwright.wood;

/**
 * The air of a room that wood lies in.
 *
 * @param temperatureC −1.1 to 50 °C, the range of the Wood Handbook's table
 * @param humidityPercent relative humidity, 0 to 100 %
 */
public record RoomAir(double temperatureC, double humidityPercent) {
  public static final double LEAST_TEMPERATURE_C = -1.1;
  public static final double GREATEST_TEMPERATURE_C = 50;

  /**
   * @throws IllegalArgumentException outside the range; its message is one line for people
   */
  public RoomAir {
    if (!(temperatureC >= LEAST_TEMPERATURE_C && temperatureC <= GREATEST_TEMPERATURE_C)) {
      throw new IllegalArgumentException(
          "temperature "
              + temperatureC
              + " °C lies outside "
              + LEAST_TEMPERATURE_C
              + " to "
              + GREATEST_TEMPERATURE_C
              + " °C, where the formula holds");
    }
    if (!(humidityPercent >= 0 && humidityPercent <= 100)) {
      throw new IllegalArgumentException(
          "humidity " + humidityPercent + " % lies outside 0 to 100 %");
    }
  }

  /**
   * The moisture that wood settles to in this air, in percent of its oven-dry mass: Wood Handbook,
   * eq. 4-5 (Hailwood and Horrobin), the form in °C.
   *
   * <p>Within 0.06 of the Handbook's Table 4-2, which runs from 5 to 95 % humidity. At 0 % the
   * equation gives 0. Towards 100 % it stays finite (29 % at 20 °C) and means little: wood in
   * saturated air goes on to its fibre saturation.
   */
  public double equilibriumMoisturePercent() {
    double t = temperatureC;
    double w = 349 + t * (1.29 + 0.0135 * t);
    double k = 0.805 + t * (0.000736 - 0.00000273 * t);
    double k1 = 6.27 - t * (0.00938 + 0.000303 * t);
    double k2 = 1.91 + t * (0.0407 - 0.000293 * t);
    double kh = k * humidityPercent / 100;
    double first = k1 * kh;
    double second = first * k2 * kh;
    return 1800 / w * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
  }
}
