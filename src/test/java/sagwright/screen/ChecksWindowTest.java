package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.LineOpener;
import sagwright.check.GuidedPoints;
import sagwright.check.LocalGravity;
import sagwright.job.BenchPlace;
import sagwright.job.CalibrationDrafts;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRodState;
import sagwright.job.ChecksShop;
import sagwright.screen.checks.ChecksDesk;
import sagwright.screen.checks.ChecksScreen;
import sagwright.screen.checks.ChecksView;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;

/** The checks on a real workshop and a live head, by keyboard alone. */
@CacioTest
@Tag("window")
class ChecksWindowTest {
  private static final LocalGravity HERE = LocalGravity.at(new LocalGravity.Place(52.5, 40));
  private static final double NEWTON_PER_COUNT = 2.5e-5;
  private static final double REST_COUNTS = 8400;

  @TempDir Path folder;
  private final SteadyHead head = new SteadyHead();
  private final List<Double> hung = new CopyOnWriteArrayList<>();
  private final List<String> laid = new CopyOnWriteArrayList<>();
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private Workshop workshop;
  private CalibrationInForce inForce;
  private HeadSession session;
  private Mailbox<ChecksView> mailbox;
  private WindowUnderTest window;

  @BeforeEach
  void open() throws Exception {
    InstantSource clock = InstantSource.system();
    SpeciesTable species = SpeciesTable.published();
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(clock, "test"));
    inForce = new CalibrationInForce(workshop, clock);
    ChecksShop shop =
        new ChecksShop(
            new ChecksShop.Ground(
                workshop,
                species,
                new Place(),
                new SetUp(100, 1100, 600, 600, 0),
                clock,
                "Sagwright test"),
            inForce,
            new CheckRodState(workshop, species, inForce, clock));
    session = HeadSession.lasting(head, HeadTiming.ORDINARY, snapshot -> {});
    mailbox = new Mailbox<>(ChecksDesk.atFirst(shop));
    ChecksDesk desk = new ChecksDesk(shop, session, work, mailbox, laid::add);
    window =
        WindowUnderTest.open(
            () -> {
              Shell shell = new Shell();
              shell.add(new ChecksScreen(mailbox, desk));
              shell.open("Checks");
              return shell;
            });
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    session.close();
    WorkshopUnderTest.close(workshop, work);
  }

  /** Hears what is to hang on it. */
  private final class Place implements BenchPlace {
    @Override
    public LineOpener opener() {
      return head;
    }

    @Override
    public Calibration calibration() {
      return null;
    }

    @Override
    public void hangs(double loadN) {
      hung.add(loadN);
    }
  }

  private void keep() {
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
  }

  private void hang(double massG) {
    double counts = REST_COUNTS + HERE.loadN(massG) / NEWTON_PER_COUNT;
    head.show(counts);
    window.waitUntil(
        massG + " g stand still",
        () ->
            session.settled().load().isStill()
                && Math.abs(session.settled().load().mean() - counts) < 10);
  }

  private void waitForPoints(int points) {
    window.waitUntil(
        points + " points are taken", () -> mailbox.newest().load().points().size() == points);
  }

  private void calibrateLoad() {
    window.type("l");
    window.waitForFocusOn("load.known");
    int taken = 0;
    for (String mass : List.of("0", "1kg", "3000", "5000", "3000", "1000")) {
      hang(mass.equals("1kg") ? 1000 : Double.parseDouble(mass));
      window.type(mass);
      window.press(KeyEvent.VK_ENTER);
      waitForPoints(++taken);
    }
    hang(0);
    window.press(KeyEvent.VK_SPACE); // what comes next is proposed: a pedal is enough
    waitForPoints(++taken);
    window.tabTo("load.latitude");
    window.type("52.5");
    window.press(KeyEvent.VK_ENTER);
    window.waitForFocusOn("load.height");
    window.type("40");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("g is known", () -> mailbox.newest().gravity().equals(Optional.of(HERE)));
    window.tabTo("load.initials");
    window.type("KM");
    keep();
  }

  private void calibrateGauge() {
    window.type("g");
    window.waitForFocusOn("gauge.known");
    for (String[] point :
        new String[][] {
          {"0", "3"}, {"10", "10002"}, {"25", "25004"}, {"10", "10003"}, {"0", "3"}
        }) {
      int before = mailbox.newest().gauge().points().size();
      window.type(point[0]);
      window.press(KeyEvent.VK_TAB);
      window.type(point[1]);
      window.press(KeyEvent.VK_ENTER);
      window.waitUntil(
          "the block is taken", () -> mailbox.newest().gauge().points().size() > before);
      window.waitForFocusOn("gauge.known");
    }
    keep();
  }

  @Test
  void aNewcomerCalibratesTheBenchAndEntersItsRodWithoutAMouse() {
    window.waitForFocusOn("checks.due");
    calibrateLoad();
    window.waitForFocusOn("checks.due");
    assertThat(inForce.complete()).as("the gauge is still missing").isNull();
    calibrateGauge();
    window.waitForFocusOn("checks.due");
    window.waitUntil("both are kept", () -> inForce.complete() != null);
    Calibration kept = inForce.complete();
    assertThat(kept.load().newtonPerCount())
        .isCloseTo(NEWTON_PER_COUNT, within(NEWTON_PER_COUNT * 1e-4));
    assertThat(kept.gauge().mmPerStep()).isCloseTo(0.001, within(1e-6));
    assertThat(kept.by()).isEqualTo("KM");
    assertThat(window.saidBy("foot")).startsWith("The gauge is calibrated.");

    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.waitUntil("the gauge is taken back", () -> inForce.complete() == null);

    window.type("r");
    window.waitForFocusOn("rod.diameter");
    for (String typed : new String[] {"12", "0.01", "1200"}) {
      window.type(typed);
      window.press(KeyEvent.VK_ENTER);
    }
    keep();
    window.waitForFocusOn("checks.due");
    window.waitUntil("the rod is shown", () -> mailbox.newest().rod().hasRod());
    window.waitUntil(
        "the control tests it", () -> window.saidBy("checks.rod").startsWith("not seen"));
    window.type("t");
    window.waitUntil("the rod is laid", () -> laid.contains("rod-1"));
  }

  @Test
  void whatStillMovesIsNotTakenAndWhatWasTakenIsOnDisk() throws Exception {
    window.type("l");
    window.waitForFocusOn("load.known");
    hang(0);
    head.show(500_000);
    window.type("0");
    window.press(KeyEvent.VK_ENTER);
    window.waitUntil("it says so", () -> window.saidBy("foot").startsWith("It still moves"));
    assertThat(mailbox.newest().load().points()).isEmpty();
    window.tabTo("load.reading");
    window.type("8400");
    window.press(KeyEvent.VK_ENTER);
    waitForPoints(1);
    GuidedPoints left = new CalibrationDrafts(workshop).points(CalibrationDrafts.Kind.LOAD);
    assertThat(left.taken()).hasSize(1);
    assertThat(left.taken().get(0).reading()).isEqualTo(8400);
  }

  @Test
  void whatIsTypedHangsOnAPracticeBenchUntilTheCardIsLeft() {
    window.type("l");
    window.waitForFocusOn("load.known");
    window.type("1kg");
    double standard = LocalGravity.STANDARD_CGPM_1901.loadN(1000);
    window.waitUntil("a kilogram hangs", () -> hung.contains(standard));
    window.press(KeyEvent.VK_ESCAPE);
    window.waitForFocusOn("checks.due");
    window.waitUntil("nothing hangs any more", () -> hung.get(hung.size() - 1) == 0);
  }

  @Test
  void gravityCountsWithoutEnterAndACalibrationWithoutItAsksForIt() {
    window.type("l");
    window.waitForFocusOn("load.known");
    double[][] points = {{0, 8400}, {1000, 400_000}, {2000, 792_000}, {0, 8400}};
    for (double[] point : points) {
      int before = mailbox.newest().load().points().size();
      window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
      window.type(Math.round(point[0]) + "");
      window.press(KeyEvent.VK_TAB);
      window.type(Math.round(point[1]) + "");
      window.press(KeyEvent.VK_ENTER);
      waitForPoints(before + 1);
      window.waitForFocusOn("load.known");
    }
    keep();
    window.waitForFocusOn("load.g");
    window.type("9,812");
    keep();
    window.waitForFocusOn("load.initials");
    window.type("KM");
    keep();
    window.waitForFocusOn("checks.due");
    assertThat(window.saidBy("foot")).startsWith("The load is calibrated.");
    assertThat(mailbox.newest().gravity()).isEqualTo(Optional.of(new LocalGravity(9.812)));
  }
}
