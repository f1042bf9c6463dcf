package sagwright.screen.bench;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What was taken for want of anything better, by the names of docs/contract.md, in words. */
final class AssumedWords {
  private static final Map<String, String> WORDS =
      Map.of(
          "diameterUncertaintyMm", "how well the calipers read",
          "positionUncertaintyMm", "how well supports, load and gauge are placed",
          "frameComplianceMmPerN", "what the frame gives",
          "modulusToShearRatio", "the ratio E/G of the species",
          "loadUncertaintyN", "the noise of the load",
          "loadScaleUncertaintyPercent", "how well the load is calibrated",
          "gaugeUncertaintyMm", "the noise of the gauge",
          "gaugeScaleUncertaintyPercent", "how well the gauge is calibrated");

  private AssumedWords() {}

  /** "taken as usual, not measured: …"; empty where nothing was. */
  static String of(List<String> keys) {
    return keys.isEmpty()
        ? ""
        : keys.stream()
            .map(key -> WORDS.getOrDefault(key, key))
            .collect(Collectors.joining(", ", "taken as usual, not measured: ", ""));
  }
}
