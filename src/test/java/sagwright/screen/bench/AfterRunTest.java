package sagwright.screen.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.InventedBench;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.bench.Waiting;
import sagwright.job.BenchPlace;
import sagwright.job.BenchShop;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.screen.bench.BenchActions.Choice;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What the maker is asked after a run, on a real workshop; the runs are typed in. */
class AfterRunTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final double MM_PER_N = 0.25;

  @TempDir Path folder;
  private final Mailbox<BenchView> mailbox = new Mailbox<>(BenchDesk.atFirst());
  private Workshop workshop;
  private BenchDesk desk;

  /** A bench whose head is never there. */
  private static final class WithoutHead implements BenchPlace, LineOpener {
    @Override
    public LineOpener opener() {
      return this;
    }

    @Override
    public Calibration calibration() {
      return InventedBench.CALIBRATION;
    }

    @Override
    public String description() {
      return "nowhere";
    }

    @Override
    public ByteLine open() throws LineNotOpenedException {
      throw new LineNotOpenedException("nothing is plugged in");
    }
  }

  @BeforeEach
  void open() throws Exception {
    InstantSource clock = InstantSource.system();
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(clock, "test"));
    ImportDocuments imports = new ImportDocuments(workshop, SPECIES);
    imports.bring(InventedBlanks.untested(Spec.ash("25-001", 12_000)), true);
    imports.bring(InventedBlanks.untested(Spec.ash("25-002", 12_000)), true);
    BenchShop shop = new BenchShop(workshop, SPECIES, new WithoutHead(), clock, Runnable::run);
    desk = new BenchDesk(shop, Runnable::run, mailbox);
    desk.makeSeriesOf(1);
    desk.lay("25-001");
    waitFor(view -> view.shaft() != null);
  }

  @AfterEach
  void close() throws WorkshopException {
    desk.close();
    workshop.close();
  }

  /** Types a run in whose shaft gives so much more than the others'. */
  private void runGivingMore(double percent) {
    double mmPerN = MM_PER_N * (1 + percent / 100);
    List<Double> loadsN = DoubleStream.iterate(0, n -> n <= 16, n -> n + 2).boxed().toList();
    List<Double> dialMm = loadsN.stream().map(loadN -> loadN * mmPerN).toList();
    desk.keepHandRead(
        new BenchActions.HandRead(false, loadsN, dialMm),
        new Reply() {
          @Override
          public void done() {}

          @Override
          public void refused(String why) {
            throw new AssertionError(why);
          }
        });
  }

  private List<Run> runsOf(String tag) throws WorkshopException {
    return workshop.runs().of(workshop.blanks().require(tag));
  }

  /** The head's own thread puts views, too: what is waited for may come a view later. */
  private void waitFor(Predicate<BenchView> isShown) {
    Waiting.until(
        () -> isShown.test(mailbox.newest()),
        () -> mailbox.newest().shownDetail() + "; " + question(mailbox.newest()));
  }

  private void waitForQuestion(Predicate<String> isAsked) {
    waitFor(view -> isAsked.test(question(view)));
  }

  private static String question(BenchView view) {
    return view.question() == null ? "" : view.question().words();
  }

  @Test
  void aBlankThatIsNoMoreIsLaidWithTheQuestionWhetherItIsTheOne() throws Exception {
    workshop.blanks().end(workshop.blanks().require("25-002"), "split at a knot");
    desk.lay("25-002");
    waitFor(
        view -> view.warnings().contains("25-002 was ended: split at a knot. Is this the one?"));
  }

  @Test
  void aRunThatStandsOutIsSetAsideWithItsReasonAndMayCountAgain() throws Exception {
    for (double percent : new double[] {0, 0.05, -0.05, 0.02}) {
      runGivingMore(percent);
    }
    waitForQuestion(String::isEmpty);
    runGivingMore(3);
    waitForQuestion("Run 5 stands out from the others. Set it aside?"::equals);
    desk.answer(Choice.SET_ASIDE);
    waitForQuestion("Run 5 does not count now."::equals);
    assertThat(runsOf("25-001")).extracting(Run::counts).containsOnlyOnce(false).hasSize(5);
    assertThat(runsOf("25-001").get(4).setAsideWhy()).contains("Grubbs");
    desk.answer(Choice.KEEP);
    waitForQuestion(String::isEmpty);
    assertThat(runsOf("25-001")).extracting(Run::counts).containsOnly(true).hasSize(5);
  }

  @Test
  void aRunThatStandsOutIsAskedOfOnceWhereItIsLeftIn() throws Exception {
    for (double percent : new double[] {0, 0.05, -0.05, 0.02, 3}) {
      runGivingMore(percent);
    }
    waitForQuestion(words -> words.startsWith("Run 5 stands out"));
    desk.answer(Choice.LATER);
    waitForQuestion(String::isEmpty);
    runGivingMore(0.03);
    waitFor(view -> view.answer() != null && view.answer().from().contains("6"));
    waitForQuestion(String::isEmpty);
    assertThat(runsOf("25-001")).extracting(Run::counts).containsOnly(true).hasSize(6);
  }

  @Test
  void aRunOnTheWrongBlankGoesToTheOneThatIsLaidNext() throws Exception {
    runGivingMore(0);
    runGivingMore(10);
    waitForQuestion(words -> words.startsWith("Is this the right blank? 9 % softer than before"));
    desk.answer(Choice.MOVE);
    waitFor(view -> view.phase() == Phase.NO_BLANK && view.question() == null);
    desk.lay("25-002");
    assertThat(runsOf("25-001")).hasSize(1);
    assertThat(runsOf("25-002")).hasSize(1);
    assertThat(runsOf("25-002").get(0).moved().fromTag()).isEqualTo("25-001");
  }
}
