package sagwright.wood;

/**
 * How a modulus at 12 % moisture changes with the wood's temperature: Wood Handbook, Table 5-16,
 * {@code 7.8553 − 0.1108·T} percent against 70 °F, T in °F from −15 to 150.
 *
 * <p>For what is said beside an answer; no answer is changed by it.
 */
public final class TemperatureEffect {
  private static final double LEAST_FAHRENHEIT = -15;
  private static final double GREATEST_FAHRENHEIT = 150;

  private TemperatureEffect() {}

  /**
   * By how many percent a wood gets stiffer for every 10 °C that it is warmer; below 0, for it gets
   * softer.
   */
  public static double percentPer10C() {
    return modulusChangePercent(30) - modulusChangePercent(20);
  }

  /** By how many percent the modulus differs from that at 21.1 °C; null outside −26…65 °C. */
  public static Double modulusChangePercent(double temperatureC) {
    double fahrenheit = 32 + temperatureC * 9 / 5;
    if (!(fahrenheit >= LEAST_FAHRENHEIT && fahrenheit <= GREATEST_FAHRENHEIT)) {
      return null;
    }
    return 7.8553 - 0.1108 * fahrenheit;
  }
}
