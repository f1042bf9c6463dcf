package sagwright.job;

import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Runs;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Moves a run that lay under the wrong blank to the one that it was made on. Load and deflection
 * stay as they were read; what they say of the wood is worked out anew, for it was reckoned from
 * the other blank's diameters.
 */
public final class MoveRun {
  private final Workshop workshop;
  private final BlankShaft shafts;
  private final SheetReader reader;
  private final EvaluateRun evaluate;

  public MoveRun(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.shafts = new BlankShaft(workshop, species);
    this.reader = new SheetReader(species);
    this.evaluate = new EvaluateRun(species);
  }

  /**
   * @param run that gave an answer
   * @param to whose newest caliper entry is the shaft that was tested
   * @throws WorkshopException where the run cannot have been made on that blank
   */
  public void move(TestedRun run, Blank to, String why) throws WorkshopException {
    Sheet there;
    try {
      there = reader.read(run.sheet().jsonOnShaftOf(shafts.now(to)));
    } catch (BadDocumentException e) {
      throw new WorkshopException(
          "run " + run.run().id() + " was not made on " + to.tag() + ": " + e.getMessage());
    }
    Runs.OnOtherShaft onOther =
        new Runs.OnOtherShaft(there.json(), evaluate.of(there, run.ofBench()));
    workshop.runs().move(run.run(), to, onOther, why);
  }
}
