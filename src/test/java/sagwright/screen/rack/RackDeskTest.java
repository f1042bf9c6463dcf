package sagwright.screen.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SectionShape;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.screen.Mailbox;
import sagwright.screen.OnBench;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.rack.BlankEntry.Calipers;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The rack's desk over a real workshop file whose clock the test turns on. */
class RackDeskTest {
  private final AtomicReference<Instant> now =
      new AtomicReference<>(Instant.parse("2026-03-02T09:00:00Z"));
  private final Mailbox<RackView> mailbox = new Mailbox<>(RackDesk.atFirst(ShopUnits.METRIC));
  private final List<String> refused = new ArrayList<>();
  private final Reply reply =
      new Reply() {
        @Override
        public void done() {
          // the view shows it
        }

        @Override
        public void refused(String why) {
          refused.add(why);
        }
      };
  private Workshop workshop;
  private RackDesk desk;
  private String toBeGuessed = "";

  private final class Bench implements OnBench {
    @Override
    public void lay(String tag) {
      throw new AssertionError("nothing is laid here");
    }

    @Override
    public String toBeGuessed() {
      return toBeGuessed;
    }
  }

  @BeforeEach
  void open(@TempDir Path folder) throws WorkshopException {
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(now::get, "test"));
    desk =
        new RackDesk(
            workshop, SpeciesTable.published(), now::get, Runnable::run, mailbox, new Bench());
    desk.enter(blank(402.0, 12.5, Grain.UNSEEN, ""), reply);
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private static BlankEntry blank(double massG, double tipMm, Grain grain, String why) {
    return new BlankEntry(
        "25-014",
        "European ash",
        "near size",
        SectionShape.ELLIPSE,
        1490.0,
        massG,
        11.2,
        List.of(new Calipers(0, tipMm, null), new Calipers(1490, 31, null)),
        grain,
        why);
  }

  private RackView view() {
    return mailbox.newest();
  }

  private List<String> events() {
    return view().open().events().stream().map(e -> e.what() + ": " + e.figures()).toList();
  }

  private void daysLater(int days) {
    now.updateAndGet(at -> at.plus(Duration.ofDays(days)));
  }

  @Test
  void aCorrectionFollowsAndSaysWhyAndWhatItWasBefore() {
    daysLater(1);
    desk.measure(blank(402.0, 12.3, Grain.UNSEEN, "the tip was misread"), reply);
    assertThat(refused).isEmpty();
    assertThat(events())
        .containsExactly(
            "entered: 402.0 g, 12.5 mm at the tip, 31 at the butt, 2 stations",
            "stage: near size",
            "measured: at 0 mm 12.3 mm, was 12.5");
    assertThat(view().open().events().get(2).details()).isEqualTo("the tip was misread");
    desk.measure(blank(402.0, 12.2, Grain.UNSEEN, ""), reply);
    assertThat(refused).containsExactly("say why: turned, weighed, what was misread");
    assertThat(events()).hasSize(3);
  }

  @Test
  void aTagThatIsTakenIsRefusedByItsFieldAndNothingIsChanged() {
    desk.enter(blank(410.0, 12.4, Grain.UNSEEN, ""), reply);
    assertThat(refused).containsExactly("tag: there is a blank 25-014 already");
    assertThat(view().open().entry().massG()).isEqualTo(402.0);
  }

  @Test
  void theHeadSaysMassAndMoisture() {
    assertThat(view().open().details())
        .isEqualTo("European ash, near size, 1490 mm, 402 g, 11.2 % moist");
  }

  @Test
  void theRecordOfAnEndedBlankSaysWhenAndWhyAndItsRowIsNoFreeOne() {
    daysLater(3);
    desk.end("25-014", "split at the butt", reply);
    RackView.Row row = view().blanks().get(0);
    assertThat(row.endedWhy()).isEqualTo("split at the butt");
    assertThat(row.words()).contains("split at the butt").doesNotContain("free", "promised");
    assertThat(row.seasoning()).isEmpty();
    desk.open("25-014");
    assertThat(view().open().isEnded()).isTrue();
    RackView.Event last = view().open().events().get(view().open().events().size() - 1);
    assertThat(last.what() + " " + last.day() + ": " + last.figures())
        .isEqualTo("ended 5 Mar 2026: split at the butt");
    assertThat(refused).isEmpty();
  }

  @Test
  void whatTheHandIsToGuessFirstIsNotToBeReadOnTheRack() throws Exception {
    new ImportDocuments(workshop, SpeciesTable.published())
        .bring(InventedBlanks.sheet(Spec.ash("25-020", 12_000)), true);
    desk.open("25-020");
    RackView.Event tested = tested();
    assertThat(row("25-020").stiffnessNPerMm()).isNotNull();
    assertThat(tested.figures()).contains("N/mm");
    toBeGuessed = "25-020";
    desk.open("25-020");
    assertThat(row("25-020").stiffnessNPerMm()).isNull();
    assertThat(row("25-020").modulusGPa()).isNull();
    assertThat(row("25-020").tested()).isNotEmpty();
    assertThat(tested().figures() + tested().details())
        .isEqualTo("first the hand: the guess is awaited");
    toBeGuessed = "";
    desk.refresh();
    assertThat(tested()).isEqualTo(tested);
  }

  private RackView.Row row(String tag) {
    return view().blanks().stream().filter(r -> r.tag().equals(tag)).findFirst().orElseThrow();
  }

  private RackView.Event tested() {
    return view().open().events().stream()
        .filter(event -> event.what().equals("tested"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void weighingsTellTheSeasoningOnTheListAndOnTheRecord() {
    daysLater(7);
    desk.measure(view().open().entry().weighed(400.2), reply);
    assertThat(view().blanks().get(0).seasoning()).isEqualTo("−1.8 g/week");
    assertThat(view().open().wood()).isEqualTo("here for 7 days, loses 1.8 g a week");
    daysLater(7);
    desk.measure(view().open().entry().weighed(400.1), reply);
    assertThat(view().blanks().get(0).seasoning()).isEqualTo("settled");
    assertThat(view().blanks().get(0).words()).contains("settled");
  }

  @Test
  void grainIsSeenOnTheListFoundByTheFilterAndOnTheRecord() {
    Grain grain = new Grain(9.0, Grain.RunOut.SLIGHT, "a dark fleck");
    desk.measure(blank(402.0, 12.5, grain, "looked at"), reply);
    assertThat(view().blanks().get(0).grain()).isEqualTo(grain);
    assertThat(view().blanks().get(0).words()).contains("slight run-out", "a dark fleck");
    assertThat(events()).contains("grain: 9, slight run-out");
  }

  @Test
  void notesAndEndsAreTakenBackByOneUndoEach() throws Exception {
    desk.note("25-014", "rings like a bell", reply);
    assertThat(events()).contains("note: rings like a bell");
    desk.end("25-014", "split at the butt", reply);
    assertThat(view().blanks().get(0).isEnded()).isTrue();
    assertThat(view().open()).isNull();
    assertThat(view().said()).startsWith("25-014 is ended: split at the butt.");
    desk.undo(reply);
    assertThat(view().said()).isEqualTo("Taken back: ended 25-014: split at the butt.");
    assertThat(view().blanks().get(0).isEnded()).isFalse();
    desk.undo(reply);
    desk.open("25-014");
    assertThat(events()).noneMatch(event -> event.startsWith("note"));
    desk.undo(reply);
    assertThat(view().blanks()).isEmpty();
    desk.undo(reply);
    assertThat(refused).containsExactly("there is nothing to undo");
  }
}
