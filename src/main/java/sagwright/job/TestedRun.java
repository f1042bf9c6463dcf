package sagwright.job;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Shaft;
import sagwright.run.Readings;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Warning;
import sagwright.workshop.Run;
import sagwright.workshop.RunOrigin;

/** A run that counts, worked out. */
public record TestedRun(Run run, Sheet sheet, Evaluation evaluation) {
  public Readings readings() {
    return sheet.readings();
  }

  public SetUp setUp() {
    return sheet.setUp().positions();
  }

  /** What was worked out. */
  public BendTest bendTest() {
    return sheet.bendTest();
  }

  /** The shaft as it was when it was tested. */
  public Shaft shaft() {
    return sheet.shaft();
  }

  /** The keys whose defaults were taken. */
  public List<String> assumed() {
    return sheet.assumed();
  }

  /** What was found amiss while it was recorded, beside what its readings say themselves. */
  public List<Warning> ofBench() {
    if (run.origin() != RunOrigin.BENCH) {
      return List.of();
    }
    List<String> ofReadings = evaluation.warnings().stream().map(Warning::inWords).toList();
    return JsonLine.parse(run.outcome().answer()).texts("warnings").stream()
        .filter(words -> !ofReadings.contains(words))
        .<Warning>map(KeptWarning::new)
        .toList();
  }

  public boolean isSameRunAs(TestedRun other) {
    return run.id() == other.run.id();
  }
}
