package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** A blank's runs as sheets that give the same answers elsewhere. */
public final class ExportBlank {
  private final Workshop workshop;
  private final SheetReader reader;

  public ExportBlank(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
  }

  /**
   * The sheets of the runs that count, oldest first, each on one line.
   *
   * @param all false for the latest alone
   * @throws PoorRunException where no run counts
   */
  public List<String> sheets(String tag, boolean all) throws WorkshopException, PoorRunException {
    Blank blank = workshop.blanks().require(tag);
    List<Run> runs = workshop.runs().counting(blank);
    if (runs.isEmpty()) {
      throw new PoorRunException(blank.tag() + " has no run that counts");
    }
    List<String> sheets = new ArrayList<>();
    for (Run run : all ? runs : runs.subList(runs.size() - 1, runs.size())) {
      sheets.add(underTag(workshop.runs().sheet(run), blank));
    }
    return sheets;
  }

  /** A run that was moved here bears the tag of the blank that it was recorded on. */
  private String underTag(String sheet, Blank blank) throws WorkshopException {
    try {
      return reader.read(sheet).jsonUnderTag(blank.tag());
    } catch (BadDocumentException e) {
      throw new WorkshopException("the record of " + blank.tag() + ": " + e.getMessage());
    }
  }
}
