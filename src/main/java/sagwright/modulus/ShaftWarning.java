package sagwright.modulus;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.beam.Taper;
import sagwright.uncertainty.Warning;

/** What a shaft's own figures give reason to say. */
public sealed interface ShaftWarning extends Warning {
  /** The shaft's centre of mass lies outside the supports. */
  record TipsOff(double centreOfMassMm, double supportAMm, double supportBMm)
      implements ShaftWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the shaft's centre of mass, at %.0f mm, lies outside the supports at %.0f and %.0f mm:"
              + " it would tip off",
          centreOfMassMm,
          supportAMm,
          supportBMm);
    }
  }

  /** An end lies far from the station that its diameter is carried on from. */
  record EndFarFromStation(boolean isTipEnd, double distanceMm) implements ShaftWarning {
    /** Farther than this is worth a word (docs/contract.md, section 3). */
    static final double NEAR_ENOUGH_MM = 100;

    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the %s end lies %.0f mm from the nearest station: its diameter is carried on from there",
          isTipEnd ? "tip" : "butt",
          distanceMm);
    }
  }

  /** The test went near what this wood may bear. */
  record HighStress(double stressMPa, double safeMPa) implements ShaftWarning {
    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the greatest bending stress was %.0f MPa, more than the %.0f MPa that are safe for this"
              + " wood",
          stressMPa,
          safeMPa);
    }
  }

  /** What a shaft's outline alone gives reason to say. */
  static List<Warning> ofOutline(Taper taper) {
    List<Warning> warnings = new ArrayList<>();
    double tipMm = taper.stationXMm(0);
    double buttMm = taper.lengthMm() - taper.stationXMm(taper.stationCount() - 1);
    if (tipMm > EndFarFromStation.NEAR_ENOUGH_MM) {
      warnings.add(new EndFarFromStation(true, tipMm));
    }
    if (buttMm > EndFarFromStation.NEAR_ENOUGH_MM) {
      warnings.add(new EndFarFromStation(false, buttMm));
    }
    return warnings;
  }
}
