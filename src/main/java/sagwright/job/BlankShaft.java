package sagwright.job;

import sagwright.bench.Calibration;
import sagwright.modulus.Shaft;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SetUpDocument;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.sheet.TestSheet;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The shaft that a blank is now, by its newest caliper entry. */
public final class BlankShaft {
  private final Workshop workshop;
  private final SheetReader reader;

  public BlankShaft(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
  }

  /** Its outline, mass and moisture now. */
  public Shaft shaft(Blank blank) throws WorkshopException {
    return now(blank).shaft();
  }

  /** A sheet without set-up and run. */
  public Sheet now(Blank blank) throws WorkshopException {
    try {
      return reader.read(workshop.blanks().caliperNow(blank).document());
    } catch (BadDocumentException e) {
      throw new IllegalStateException("a stored shaft cannot be read: " + e.getMessage(), e);
    }
  }

  /**
   * The blank's shaft on a bench: the sheet of a test before its run.
   *
   * @param setUp as written; its frame compliance goes before the calibration's
   * @param calibration complete
   */
  public Sheet onBench(Blank blank, SetUpDocument setUp, Calibration calibration)
      throws WorkshopException {
    try {
      return reader.read(TestSheet.before(now(blank).json(), setUp, calibration));
    } catch (BadDocumentException e) {
      throw new IllegalStateException("a sheet of our own cannot be read: " + e.getMessage(), e);
    }
  }
}
