package sagwright.job;

import java.util.List;
import sagwright.run.HandReadings;
import sagwright.sheet.Sheet;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.RunOrigin;
import sagwright.workshop.RunOutcome;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Keeps a run that was read by hand: masses hung, a dial read. */
public final class KeepHandRead {
  private final Workshop workshop;
  private final EvaluateRun evaluate;

  public KeepHandRead(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.evaluate = new EvaluateRun(species);
  }

  /**
   * @param before the sheet of the test without its run
   * @return the run; it is on the record also where it gave no answer
   */
  public Run keep(Blank blank, Sheet before, HandReadings pairs) throws WorkshopException {
    Sheet sheet = before.withHandRead(pairs);
    RunOutcome outcome = evaluate.of(sheet, List.of());
    return workshop.runs().add(blank, sheet, RunOrigin.TYPED, outcome);
  }
}
