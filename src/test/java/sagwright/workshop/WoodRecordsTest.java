package sagwright.workshop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.sheet.Sheet;
import sagwright.wood.Grain;
import sagwright.wood.Grain.RunOut;
import sagwright.wood.Seasoning;

/** Grain and seasoning on the records, in a real file whose clock the test turns on. */
class WoodRecordsTest {
  private final AtomicReference<Instant> now = new AtomicReference<>(WorkshopFixture.START);
  private Workshop workshop;

  @BeforeEach
  void open(@TempDir Path folder) throws WorkshopException {
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(now::get, "test"));
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private void daysLater(int days) {
    now.updateAndGet(at -> at.plus(Duration.ofDays(days)));
  }

  private static Sheet weighing(double massG, double tipMm) {
    return WorkshopFixture.read(
        "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-014\",\"massG\":"
            + massG
            + ",\"stations\":[{\"xMm\":0,\"depthMm\":"
            + tipMm
            + "},{\"xMm\":1490,\"depthMm\":31}]}}");
  }

  private Seasoning seasoning(Blank blank) throws WorkshopException {
    return workshop
        .woodHistories(WorkshopFixture.READER)
        .all()
        .get(blank.id())
        .seasoning(now.get());
  }

  @Test
  void theNewestLookAtTheGrainCountsAndTheOlderStays() throws Exception {
    Grain first = new Grain(9.0, RunOut.STRAIGHT, null);
    Grain second = new Grain(null, RunOut.RUNS_OUT, "runs out at the tip");
    Blank blank = workshop.blanks().enter(WorkshopFixture.untested("25-014"), first);
    workshop.grains().add(blank, second);
    assertThat(workshop.grains().now(blank)).contains(second);
    assertThat(workshop.grains().of(blank))
        .extracting(GrainEntry::grain)
        .containsExactly(first, second);
    assertThat(workshop.grains().allNow()).containsEntry(blank.id(), second);
    workshop.actions().undoLast();
    assertThat(workshop.grains().now(blank)).contains(first);
    workshop.actions().undoLast(); // the blank and how it looked go together
    assertThat(workshop.blanks().find("25-014")).isEmpty();
  }

  @Test
  void weighingsSinceTheLastTurningTellHowItSeasons() throws Exception {
    Blank blank = workshop.blanks().enter(weighing(600, 14));
    daysLater(30);
    workshop.blanks().addCaliperEntry(blank, weighing(402.0, 11), "turned");
    daysLater(7);
    workshop.blanks().addCaliperEntry(blank, weighing(400.0, 11), "weighed");
    assertThat(seasoning(blank).state()).isEqualTo(Seasoning.State.DRYING);
    assertThat(seasoning(blank).wasTurned()).isTrue();
    assertThat(seasoning(blank).sinceTurned()).isEqualTo(Duration.ofDays(7));
    daysLater(7);
    workshop.blanks().addCaliperEntry(blank, weighing(399.9, 11), "weighed");
    assertThat(seasoning(blank).state()).isEqualTo(Seasoning.State.SETTLED);
  }

  @Test
  void aMassThatIsCarriedOnBesideABowIsNoWeighing() throws Exception {
    Blank blank = workshop.blanks().enter(weighing(400, 11));
    daysLater(7);
    Sheet rolled = weighing(400, 11).withBow(0.3, 90);
    workshop.blanks().addCaliperEntry(blank, rolled, "rolled");
    assertThat(seasoning(blank).state()).isEqualTo(Seasoning.State.UNKNOWN);
    workshop.blanks().addCaliperEntry(blank, rolled, "weighed");
    assertThat(seasoning(blank).state()).isEqualTo(Seasoning.State.SETTLED);
  }

  @Test
  void promisesAreToldAsTheyWereMadeAndTakenBack() throws Exception {
    Blank blank = workshop.blanks().enter(WorkshopFixture.untested("25-014"));
    WorkshopOrder order = workshop.orders().enter(WorkshopFixture.order("R-0007"));
    workshop.promises().make(blank, order);
    workshop.promises().release(blank, order);
    workshop.promises().make(blank, order);
    assertThat(workshop.promises().of(blank))
        .extracting(PromiseEntry::isMade)
        .containsExactly(true, false, true);
    workshop.actions().undoLast();
    assertThat(workshop.promises().of(blank)).hasSize(2);
  }
}
