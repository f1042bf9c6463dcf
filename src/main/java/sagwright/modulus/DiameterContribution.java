package sagwright.modulus;

/**
 * What the caliper readings add to a modulus's uncertainty: of each reading's variance one share is
 * an error common to all diameters of the shaft, the rest each reading's own; a width that was left
 * out shares its depth's error (docs/contract.md, section 3).
 */
final class DiameterContribution {
  private DiameterContribution() {}

  /** The change of the modulus with one diameter, MPa/mm. */
  interface Sensitivity {
    double at(int station, boolean ofWidth);
  }

  /** The contribution in MPa. */
  static double of(Shaft shaft, Sensitivity sensitivity) {
    double sum = 0;
    double sumOfSquares = 0;
    for (int i = 0; i < shaft.taper().stationCount(); i++) {
      double depth = sensitivity.at(i, false);
      double width = sensitivity.at(i, true);
      sum += depth + width;
      if (shaft.widthMeasured()[i]) {
        sumOfSquares += depth * depth + width * width;
      } else {
        sumOfSquares += (depth + width) * (depth + width);
      }
    }
    double common = shaft.diameterCommonShare();
    return shaft.diameterUncertaintyMm()
        * Math.sqrt((1 - common) * sumOfSquares + common * sum * sum);
  }
}
