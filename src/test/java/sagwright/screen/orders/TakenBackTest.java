package sagwright.screen.orders;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.ImportDocuments;
import sagwright.screen.Mailbox;
import sagwright.screen.ShopUnits;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;

class TakenBackTest {
  private static final String ORDER =
      "{\"format\":\"sagwright-order/1\",\"order\":\"R-0001\",\"finish\":{\"lengthMm\":1473,"
          + "\"taper\":[{\"xMm\":0,\"diameterMm\":9.5},{\"xMm\":1473,\"diameterMm\":29}]},"
          + "\"ask\":{\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,"
          + "\"gaugeMm\":600},\"stiffnessNPerMm\":2.25,\"tolerancePercent\":5}}";

  @TempDir Path folder;

  @Test
  void theLastActionIsTakenBackAndSaid() throws Exception {
    SpeciesTable species = SpeciesTable.published();
    List<String> said = new ArrayList<>();
    try (Workshop workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"))) {
      new ImportDocuments(workshop, species).bring(ORDER, false);
      Mailbox<OrdersView> mailbox = new Mailbox<>(OrdersDesk.atFirst(ShopUnits.METRIC));
      OrdersDesk desk = new OrdersDesk(workshop, species, Runnable::run, mailbox);
      desk.refresh();
      assertThat(mailbox.newest().orders()).hasSize(1);
      desk.undo(said::add);
      assertThat(mailbox.newest().orders()).isEmpty();
      desk.undo(said::add);
      SwingUtilities.invokeAndWait(() -> {});
    }
    assertThat(said).containsExactly("Taken back: took order R-0001.", "there is nothing to undo");
  }
}
