package sagwright.firmware;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A bend test as a hand makes one: a rest long enough for any program to have opened the line,
 * loading, unloading, rest.
 *
 * @param restS at the beginning
 * @param peakCounts of the load converter
 * @param peakUm of the gauge
 */
record BendShape(double restS, double peakCounts, double peakUm) {
  private static final double EACH_WAY_S = 4;
  private static final double AT_THE_TOP_S = 0.2;

  static BendShape to(double peakCounts, double peakUm) {
    return new BendShape(15, peakCounts, peakUm);
  }

  /** When the load is at its greatest. */
  double peakAtS() {
    return restS + EACH_WAY_S;
  }

  double unloadedAtS() {
    return restS + 2 * EACH_WAY_S + AT_THE_TOP_S;
  }

  /** Writes it for the simulated bench's {@code --signal}. */
  Path write(Path folder) throws IOException {
    Path file = folder.resolve("bend.csv");
    return Files.write(
        file,
        List.of(
            "timeS,counts,gaugeUm",
            row(0, 0),
            row(restS, 0),
            row(peakAtS(), 1),
            row(peakAtS() + AT_THE_TOP_S, 1),
            row(unloadedAtS(), 0)));
  }

  private String row(double timeS, double share) {
    return String.format(Locale.ROOT, "%.3f,%.1f,%.1f", timeS, share * peakCounts, share * peakUm);
  }
}
