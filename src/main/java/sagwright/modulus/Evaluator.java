package sagwright.modulus;

import java.util.ArrayList;
import java.util.List;
import sagwright.beam.PeakStress;
import sagwright.run.PoorRunException;
import sagwright.run.StiffnessFinder;
import sagwright.run.StiffnessFit;
import sagwright.uncertainty.Warning;
import sagwright.wood.MoistureAdjustment;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;

/** Works a {@link BendTest} out: line, modulus, budget. Stateless but for the species table. */
public final class Evaluator {
  private final SpeciesTable species;

  public Evaluator(SpeciesTable species) {
    this.species = species;
  }

  /**
   * @throws PoorRunException where the run gives no line, or the frame would be softer than what
   *     was measured
   */
  public Evaluation evaluate(BendTest test) throws PoorRunException {
    StiffnessFit fit = StiffnessFinder.find(test.readings(), test.instrument().ofOneReading());
    StiffnessSolution solution = ModulusSolver.solve(test, fit.stiffnessNPerMm());
    Shaft shaft = test.shaft();
    PeakStress peak = PeakStress.of(shaft.taper(), test.setUp().positions());
    double peakStressMPa = peak.mpaPerN() * fit.greatestLoadN();
    List<Warning> warnings = new ArrayList<>(fit.warnings());
    warnings.addAll(warningsOf(test, peakStressMPa));
    return new Evaluation(
        fit,
        stiffnessUncertainty(fit, test.instrument()),
        solution.shaftStiffnessNPerMm(),
        solution.modulusMPa(),
        modulusAt12(shaft, solution.modulusMPa()),
        shaft.densityKgM3(),
        peakStressMPa,
        solution.budget(fit.lineUncertaintyNPerMm()),
        warnings);
  }

  private Double modulusAt12(Shaft shaft, double modulusMPa) {
    return MoistureAdjustment.of(species.find(shaft.species()))
        .modulusAt12(modulusMPa, shaft.moisturePercent());
  }

  private static double stiffnessUncertainty(StiffnessFit fit, Instrument instrument) {
    double scales =
        Math.hypot(
            instrument.loadScaleUncertaintyPercent(), instrument.gaugeScaleUncertaintyPercent());
    return Math.hypot(fit.lineUncertaintyNPerMm(), fit.stiffnessNPerMm() * scales / 100);
  }

  private List<Warning> warningsOf(BendTest test, double peakStressMPa) {
    List<Warning> warnings = new ArrayList<>(ShaftWarning.ofOutline(test.shaft().taper()));
    double centre = test.shaft().taper().centreOfMassMm();
    double a = test.setUp().positions().supportAMm();
    double b = test.setUp().positions().supportBMm();
    if (centre < a || centre > b) {
      warnings.add(new ShaftWarning.TipsOff(centre, a, b));
    }
    double safeMPa =
        SafeStress.of(species, test.shaft().species(), SafeStress.ASSUMED_SHARE).stressMPa();
    if (peakStressMPa > safeMPa) {
      warnings.add(new ShaftWarning.HighStress(peakStressMPa, safeMPa));
    }
    return warnings;
  }
}
