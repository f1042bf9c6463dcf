package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The real workshop behind a page that is tested. */
final class WorkshopUnderTest {
  private WorkshopUnderTest() {}

  /** An empty one in a folder. */
  static Workshop open(Path folder) throws WorkshopException {
    return Workshop.openOrCreate(
        folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
  }

  /** Closes it when what its desks have begun is done. */
  static void close(Workshop workshop, ExecutorService work) throws Exception {
    work.shutdown();
    assertThat(work.awaitTermination(30, TimeUnit.SECONDS)).isTrue();
    workshop.close();
  }
}
