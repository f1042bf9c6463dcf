package sagwright.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import sagwright.grade.Order;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.job.PlanFinish;
import sagwright.job.PlannedFinish;
import sagwright.sheet.BadDocumentException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Lays orders into the blanks of an invented workshop, by the real job and a real file. */
public final class PlanExample {
  private static final PlanFinish PLAN = plan();

  private PlanExample() {}

  public static PlannedFinish of(Order order, String pickedTag) {
    return PLAN.plan(order, pickedTag);
  }

  private static PlanFinish plan() {
    try {
      Path folder = Files.createTempDirectory("plan-example");
      Path file = folder.resolve("workshop.db");
      PlanFinish plan;
      try (Workshop workshop =
          Workshop.openOrCreate(file, new Keeper(InstantSource.system(), "test"))) {
        SpeciesTable species = SpeciesTable.published();
        ImportDocuments imports = new ImportDocuments(workshop, species);
        for (Spec spec :
            List.of(
                Spec.ash("25-014", 11_180),
                Spec.ash("25-031", 11_950),
                Spec.ash("24-118", 12_300).withButt(30.4),
                Spec.ash("25-099", 12_412),
                Spec.ash("25-040", 10_100))) {
          imports.bring(InventedBlanks.sheet(spec), false);
        }
        plan = new PlanFinish(workshop, species);
        plan.readAgain();
      }
      Files.delete(file);
      Files.delete(folder);
      return plan;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (WorkshopException | BadDocumentException e) {
      throw new IllegalStateException(e);
    }
  }
}
