package sagwright.job;

import java.util.List;
import java.util.Optional;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.LoadLimits;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.Shaft;
import sagwright.sheet.Sheet;
import sagwright.survey.SurveyProblem;
import sagwright.workshop.Blank;
import sagwright.workshop.WorkshopOrder;

/**
 * A blank on the bench.
 *
 * @param before the sheet of its next test, without the run
 * @param limits how far that test may go
 * @param expectedStiffnessNPerMm by the published modulus of its species
 * @param runs those that count, oldest first
 * @param endedWhy null for a blank that is still there; one that was sold may come back for a test
 */
public record LaidBlank(
    Blank blank,
    Sheet before,
    LoadLimits limits,
    double expectedStiffnessNPerMm,
    List<TestedRun> runs,
    String endedWhy) {
  public LaidBlank {
    runs = List.copyOf(runs);
  }

  /** Its runs on the set-up that it lies on, turned or not. */
  public List<TestedRun> runsHere() {
    SetUp here = setUp().positions().turnedBy(0);
    return runs.stream().filter(run -> run.setUp().turnedBy(0).equals(here)).toList();
  }

  /** Of those, the runs of the shaft as it is now: turning took wood away since the others. */
  public List<TestedRun> runsAsItIs() {
    return runsHere().stream()
        .filter(run -> SurveyProblem.isSameShaft(run.shaft(), shaft()))
        .toList();
  }

  public Optional<TestedRun> latestHere() {
    List<TestedRun> here = runsHere();
    return here.isEmpty() ? Optional.empty() : Optional.of(here.get(here.size() - 1));
  }

  /**
   * Its next test.
   *
   * @param order that it is tried for, null for none
   */
  public TestSetting setting(Calibration calibration, WorkshopOrder order) {
    return new TestSetting(blank, before, calibration, order);
  }

  public Shaft shaft() {
    return before.shaft();
  }

  public BenchSetUp setUp() {
    return before.setUp();
  }

  /** r = E/G of its wood. */
  public double modulusToShearRatio() {
    return before.ratio().value();
  }

  /** How far it is off straight, null where not measured. */
  public Double bowMm() {
    return before.bowMm();
  }

  /** As written, null where it is not said. */
  public String stage() {
    return before.stage();
  }
}
