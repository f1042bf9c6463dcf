package sagwright.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** A few invented blanks and orders to practise on, for a practice workshop of its own. */
public final class PracticeRack {
  public static final String FIRST_TAG = "25-014";
  public static final String FIRST_ORDER = "R-0007";

  private static final String DOCUMENTS = "practice-rack.jsonl";

  private final Workshop workshop;
  private final SpeciesTable species;

  public PracticeRack(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.species = species;
  }

  /** Brings the rack in; a workshop that has a blank already is left as it is. */
  public void fillWhereEmpty() throws WorkshopException {
    if (!workshop.blanks().all().isEmpty()) {
      return;
    }
    ImportDocuments documents = new ImportDocuments(workshop, species);
    try (InputStream in = PracticeRack.class.getResourceAsStream(DOCUMENTS)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String document : text.lines().filter(line -> !line.isBlank()).toList()) {
        documents.bring(document, false);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (BadDocumentException e) {
      throw new IllegalStateException("the practice rack: " + e.getMessage(), e);
    }
  }
}
