package sagwright.command;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.job.BenchPlace;
import sagwright.job.BenchShop;
import sagwright.job.GradeBlank;
import sagwright.job.LaidBlank;
import sagwright.job.PracticeRack;
import sagwright.job.TestedRun;
import sagwright.job.TriedOrder;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** One whole practice test where there is no display: the same test, in words and figures. */
final class PracticeInTerminal {
  private static final String TAG = PracticeRack.FIRST_TAG;
  private static final String ORDER = PracticeRack.FIRST_ORDER;

  private final Console console;
  private final SpeciesTable species;
  private final BenchPlace place;
  private String last = "";

  PracticeInTerminal(Console console, SpeciesTable species, BenchPlace place) {
    this.console = console;
    this.species = species;
    this.place = place;
  }

  /**
   * @param file of the practice workshop, null for the usual one
   */
  void run(Path file) throws WorkshopException, CommandFailure, InterruptedException {
    Path chosen = file == null ? Workshop.practiceFile() : file;
    Keeper keeper = new Keeper(InstantSource.system(), ProgramVersion.text());
    ExecutorService work = Executors.newSingleThreadExecutor(task -> new Thread(task, "work"));
    try (Workshop workshop = Workshop.openOrCreate(chosen, keeper)) {
      new PracticeRack(workshop, species).fillWhereEmpty();
      BenchShop shop = new BenchShop(workshop, species, place, InstantSource.system(), work);
      LaidBlank laid = shop.lay(TAG, shop.usualSetUp());
      TriedOrder order = shop.order(ORDER);
      console.out().println("Practice test of " + TAG + " for " + ORDER + ": no real wood bends.");
      Run run = record(shop, laid, order);
      if (run.outcome().answer() == null) {
        throw CommandFailure.poorRun(run.outcome().noAnswer());
      }
      TestedRun tested = shop.tested(run);
      console
          .out()
          .print(EvaluationTable.of(tested.sheet(), tested.evaluation(), tested.ofBench()));
      GradeBlank.Graded graded = shop.grade(laid.blank(), order.stored());
      console.out().print(ForecastTable.of(TAG, graded.graded()));
      console.out().println("Run " + run.id() + " and grade " + graded.gradeId() + " are on the");
      console.out().println("record of " + TAG + " in " + chosen + ".");
      console.out().println("There is no display here. Where there is one, the same command opens");
      console.out().println("the window; blank --help shows how to read the record.");
    } catch (PoorRunException poor) {
      throw CommandFailure.poorRun(poor.getMessage());
    } finally {
      work.shutdown();
    }
  }

  private Run record(BenchShop shop, LaidBlank laid, TriedOrder order)
      throws WorkshopException, InterruptedException {
    try (HeadSession session =
        HeadSession.once(place.opener(), HeadTiming.ORDINARY, this::follow)) {
      CompletableFuture<Run> run =
          shop.recordTest()
              .begin(
                  session,
                  laid.setting(place.calibration(), order.stored()),
                  BenchShop.LONGEST_TEST);
      return run.get();
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
  }

  private void follow(BenchSnapshot snapshot) {
    place.follow(snapshot);
    String now = snapshot.test() == null ? "" : snapshot.test().instruction().inWords();
    if (!now.isEmpty() && !now.equals(last)) {
      last = now;
      console
          .out()
          .println(String.format(Locale.ROOT, "  %4.1f s  %s", snapshot.test().elapsedS(), now));
    }
  }
}
