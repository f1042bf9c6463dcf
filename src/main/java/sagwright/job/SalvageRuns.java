package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.bench.Ending;
import sagwright.bench.RecordedRun;
import sagwright.bench.TestPlan;
import sagwright.bench.TestReplay;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.CalibrationReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.CutOffRun;
import sagwright.workshop.Run;
import sagwright.workshop.RunStart;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Closes every run that was cut off by a power failure or a crash with what was read of it. */
public final class SalvageRuns {
  private final Workshop workshop;
  private final CloseRun close;
  private final GradeAgain gradeAgain;

  public SalvageRuns(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.close = new CloseRun(workshop, species);
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /**
   * A run that was closed.
   *
   * @param samples how many readings of load and deflection it holds
   */
  public record Salvaged(String tag, int samples, Run run) {}

  /** Oldest first; a run that goes on in another program is left alone. */
  public List<Salvaged> all() throws WorkshopException {
    List<CutOffRun> cutOff = workshop.cutOffRuns().takeAll();
    List<Salvaged> salvaged = new ArrayList<>();
    try {
      for (CutOffRun run : cutOff) {
        salvaged.add(salvage(run));
      }
    } finally {
      cutOff.forEach(run -> run.journal().close());
    }
    return salvaged;
  }

  private Salvaged salvage(CutOffRun cut) throws WorkshopException {
    RunStart start = cut.start();
    RecordedRun recorded = TestReplay.of(cut.wire(), plan(start), Ending.CUT_OFF);
    Run run = close.close(start, cut.journal(), recorded);
    gradeAgain.of(start.blank());
    return new Salvaged(start.blank().tag(), recorded.samples().size(), run);
  }

  private static TestPlan plan(RunStart start) throws WorkshopException {
    try {
      return new TestPlan(CalibrationReader.read(start.calibration()), start.limits());
    } catch (BadDocumentException e) {
      throw new WorkshopException("the record of " + start.blank().tag() + ": " + e.getMessage());
    }
  }
}
