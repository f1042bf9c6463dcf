package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.file.Path;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.example.ExampleRack;
import sagwright.example.ExampleWood;
import sagwright.job.BenchShop;
import sagwright.job.ImportDocuments;
import sagwright.job.LaidBlank;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What the practice bench takes the things that are laid on it for. */
class PracticeTruthTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final String OF_THE_EXAMPLE = "13-001";

  @TempDir Path folder;

  private LaidBlank laid(String tag, String species, double moisturePercent)
      throws WorkshopException, BadDocumentException {
    Keeper keeper = new Keeper(InstantSource.system(), "test");
    try (Workshop workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), keeper)) {
      new ImportDocuments(workshop, SPECIES)
          .bring(
              "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\""
                  + tag
                  + "\",\"species\":\""
                  + species
                  + "\",\"lengthMm\":1200,\"moisturePercent\":"
                  + moisturePercent
                  + ",\"stations\":[{\"xMm\":0,\"depthMm\":12},{\"xMm\":1200,\"depthMm\":12}]}}",
              false);
      PracticePlace place = new PracticePlace(1, new PracticeTruth(SPECIES, null));
      BenchShop shop =
          new BenchShop(workshop, SPECIES, place, InstantSource.system(), Runnable::run);
      return shop.lay(tag, shop.usualSetUp());
    }
  }

  @Test
  void aSteelRodIsSteel() throws WorkshopException, BadDocumentException {
    LaidBlank rod = laid("ROD-1", "steel", 0);
    assertEquals(206_000, new PracticeTruth(SPECIES, null).applyAsDouble(rod));
    assertEquals(206_000, new PracticeTruth(SPECIES, new ExampleRack(SPECIES)).applyAsDouble(rod));
  }

  @Test
  void anExampleBlankHasItsOwnWoodAtItsMoistureInTheExampleAlone()
      throws WorkshopException, BadDocumentException {
    ExampleRack rack = new ExampleRack(SPECIES);
    ExampleWood wood = rack.wood(OF_THE_EXAMPLE).orElseThrow();
    LaidBlank blank = laid(OF_THE_EXAMPLE, "European ash", 10);
    assertEquals(wood.modulusMPa(10), new PracticeTruth(SPECIES, rack).applyAsDouble(blank));
    assertNotEquals(wood.modulusMPa(10), new PracticeTruth(SPECIES, null).applyAsDouble(blank));
  }
}
