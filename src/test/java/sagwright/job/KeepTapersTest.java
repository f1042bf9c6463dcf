package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.job.KeepTapers.KeptTaper;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class KeepTapersTest {
  private static final Taper SLIM =
      Taper.round(
          List.of(Station.round(0, 9.3), Station.round(737.25, 18.1), Station.round(1473.2, 28.5)),
          1473.2);

  @TempDir Path folder;
  private Workshop workshop;
  private KeepTapers tapers;

  @BeforeEach
  void open() throws WorkshopException {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
    tapers = new KeepTapers(workshop);
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private List<String> names() throws WorkshopException {
    return tapers.all().stream().map(KeptTaper::name).toList();
  }

  private String refusal(String name) {
    return assertThrows(WorkshopException.class, () -> tapers.keep(name, SLIM)).getMessage();
  }

  @Test
  void aTaperComesBackAsItWasKept() throws WorkshopException {
    tapers.keep(" slim ", SLIM);
    KeptTaper kept = tapers.all().get(0);
    assertEquals("slim", kept.name());
    assertEquals(SLIM.stations(), kept.taper().stations());
    assertEquals(1473.2, kept.taper().lengthMm());
  }

  @Test
  void aNameIsTakenOnceAndBeginsWithALetter() throws WorkshopException {
    tapers.keep("slim", SLIM);
    assertEquals("there is a taper slim already", refusal("Slim"));
    assertEquals("a taper's name begins with a letter", refusal("58 in"));
    assertEquals("a taper's name begins with a letter", refusal(" "));
    assertEquals(List.of("slim"), names());
  }

  @Test
  void keepingRenamingAndDeletingAreEachUndone() throws WorkshopException {
    tapers.keep("slim", SLIM);
    tapers.keep("club", SLIM);
    long slim = tapers.all().get(1).id();
    tapers.rename(slim, "Arrow");
    assertEquals(List.of("Arrow", "club"), names());
    tapers.delete(slim);
    assertEquals(List.of("club"), names());
    assertThrows(WorkshopException.class, () -> tapers.delete(slim));
    tapers.keep("arrow", SLIM);
    assertEquals("kept the taper arrow", workshop.actions().undoLast().what());
    assertEquals("deleted the taper Arrow", workshop.actions().undoLast().what());
    assertEquals(List.of("Arrow", "club"), names());
    assertEquals("renamed the taper slim to Arrow", workshop.actions().undoLast().what());
    assertEquals(List.of("club", "slim"), names());
    assertEquals("kept the taper club", workshop.actions().undoLast().what());
    assertEquals(List.of("slim"), names());
  }
}
