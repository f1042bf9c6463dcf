package sagwright.bench;

import java.util.Locale;
import java.util.Optional;

/**
 * Hum of the mains in the load. A head that takes fewer than two readings to a cycle shows it at
 * another frequency: at 80 readings a second 50 Hz come in as 30, 60 as 20, and so do 100 Hz, the
 * first overtone of 50 (Shannon's sampling theorem: |f − n·fs|).
 *
 * @param mainsHz 50 or 60
 * @param shownAtHz where it stands in the spectrum
 * @param amplitudeN of the sine
 */
public record MainsHum(int mainsHz, double shownAtHz, double amplitudeN) {
  /** Noise alone does not reach so many times the median among some thousands of frequencies. */
  private static final double LEAST_OVER_FLOOR = 6;

  /** Nearer to 0 Hz than so many steps it cannot be told from drift. */
  private static final int LEAST_STEPS = 4;

  static Optional<MainsHum> in(Spectrum spectrum) {
    if (spectrum.isEmpty()) {
      return Optional.empty();
    }
    Optional<MainsHum> fifty = of(50, spectrum);
    Optional<MainsHum> sixty = of(60, spectrum);
    if (fifty.isEmpty() || sixty.isEmpty()) {
      return fifty.or(() -> sixty);
    }
    double overtoneOfFifty = alias(100, spectrum.readingsPerSecond());
    boolean looksAlike = Math.abs(overtoneOfFifty - sixty.get().shownAtHz) < 3 * spectrum.stepHz();
    return looksAlike || fifty.get().amplitudeN >= sixty.get().amplitudeN ? fifty : sixty;
  }

  private static Optional<MainsHum> of(int mainsHz, Spectrum spectrum) {
    double at = alias(mainsHz, spectrum.readingsPerSecond());
    double amplitude = spectrum.amplitudeAt(at);
    boolean canBeSeen = at >= LEAST_STEPS * spectrum.stepHz();
    return canBeSeen && amplitude > LEAST_OVER_FLOOR * spectrum.floorN()
        ? Optional.of(new MainsHum(mainsHz, at, amplitude))
        : Optional.empty();
  }

  /** Where a frequency shows at so many readings a second. */
  static double alias(double frequencyHz, double readingsPerSecond) {
    return Math.abs(frequencyHz - Math.rint(frequencyHz / readingsPerSecond) * readingsPerSecond);
  }

  /** One line for people. */
  public String inWords() {
    return String.format(
        Locale.ROOT,
        "hum of the mains: %d Hz, seen at %.1f Hz, %.4f N",
        mainsHz,
        shownAtHz,
        amplitudeN);
  }
}
