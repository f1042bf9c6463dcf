package sagwright.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import sagwright.bench.Calibration;
import sagwright.bench.LineOpener;
import sagwright.bench.practice.PracticeClock;
import sagwright.bench.practice.PracticeHead;
import sagwright.bench.practice.PracticeOptions;
import sagwright.example.ExampleWorkshop;
import sagwright.job.BenchPlace;
import sagwright.job.BenchShop;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRodState;
import sagwright.job.ChecksShop;
import sagwright.job.ChoosingShop;
import sagwright.screen.bench.BenchDesk;
import sagwright.screen.bench.BenchView;
import sagwright.screen.bench.Phase;
import sagwright.screen.checks.ChecksDesk;
import sagwright.screen.checks.ChecksView;
import sagwright.screen.choose.ChooseDesk;
import sagwright.screen.choose.ChooseView;
import sagwright.screen.orders.OrdersDesk;
import sagwright.screen.orders.OrdersView;
import sagwright.screen.rack.RackDesk;
import sagwright.screen.rack.RackView;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * What every screen shows of the example workshop on the day that it was made: the views that the
 * real desks give, worked out once.
 */
final class LivedInShop {
  private static final LocalDate TODAY = LocalDate.parse("2026-11-28");
  private static final InstantSource NOW =
      InstantSource.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC));
  private static final Duration DEADLINE = Duration.ofSeconds(60);
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  static final String BLANK = "13-009";
  private static final String ORDER = "R-0121";

  private final RackView rack;
  private final OrdersView orders;
  private final ChooseView choose;
  private final ChecksView checks;
  private final BenchView bench;

  /** Made when it is first asked for: it takes some seconds. */
  private static final class Once {
    static final LivedInShop SHOP = made();
  }

  static LivedInShop shop() {
    return Once.SHOP;
  }

  private static LivedInShop made() {
    try {
      Path folder = Files.createTempDirectory("lived-in");
      Path file = folder.resolve("example.db");
      new ExampleWorkshop(SPECIES, "picture").make(file, TODAY, (done, of) -> {});
      try (Workshop workshop = Workshop.open(file, new Keeper(NOW, "picture"))) {
        return new LivedInShop(workshop);
      } finally {
        Files.delete(file);
        Files.delete(folder);
      }
    } catch (IOException | WorkshopException e) {
      throw new IllegalStateException("the example workshop for pictures", e);
    }
  }

  private LivedInShop(Workshop workshop) throws WorkshopException {
    this.rack = rack(workshop);
    this.orders = orders(workshop);
    this.choose = choose(workshop);
    CalibrationInForce inForce = new CalibrationInForce(workshop, NOW);
    CheckRodState rod = new CheckRodState(workshop, SPECIES, inForce, NOW);
    BenchShop shop = new BenchShop(workshop, SPECIES, new Place(inForce), NOW, Runnable::run);
    Mailbox<BenchView> mailbox = new Mailbox<>(BenchDesk.atFirst());
    try (BenchDesk desk = new BenchDesk(shop, Runnable::run, mailbox)) {
      desk.lay(BLANK);
      desk.tryFor(ORDER);
      this.bench = whenReady(mailbox);
      this.checks = checks(workshop, shop, desk, inForce, rod);
    }
  }

  private static RackView rack(Workshop workshop) {
    Mailbox<RackView> mailbox = new Mailbox<>(RackDesk.atFirst(ShopUnits.METRIC));
    RackDesk desk = new RackDesk(workshop, SPECIES, NOW, Runnable::run, mailbox, tag -> {});
    desk.refresh();
    desk.open(BLANK);
    return mailbox.newest();
  }

  private static OrdersView orders(Workshop workshop) {
    Mailbox<OrdersView> mailbox = new Mailbox<>(OrdersDesk.atFirst(ShopUnits.METRIC));
    new OrdersDesk(workshop, SPECIES, Runnable::run, mailbox).refresh();
    return mailbox.newest();
  }

  private static ChooseView choose(Workshop workshop) {
    Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(ShopUnits.METRIC));
    ChooseDesk desk =
        new ChooseDesk(new ChoosingShop(workshop, SPECIES, NOW), Runnable::run, mailbox);
    desk.refresh();
    desk.open(ORDER);
    desk.allOrders();
    desk.lookAt(mailbox.newest().serving().stream().limit(4).map(ChooseView.Row::tag).toList());
    return mailbox.newest();
  }

  private static ChecksView checks(
      Workshop workshop,
      BenchShop shop,
      BenchDesk bench,
      CalibrationInForce inForce,
      CheckRodState rod) {
    ChecksShop checks =
        new ChecksShop(
            new ChecksShop.Ground(
                workshop, SPECIES, shop.place(), shop.usualSetUp(), NOW, "picture"),
            inForce,
            rod);
    Mailbox<ChecksView> mailbox = new Mailbox<>(ChecksDesk.atFirst(checks));
    new ChecksDesk(checks, bench.session(), Runnable::run, mailbox, tag -> {}).lookAgain();
    return mailbox.newest();
  }

  private static BenchView whenReady(Mailbox<BenchView> mailbox) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (mailbox.newest().phase() != Phase.READY) {
      if (System.nanoTime() > end) {
        throw new IllegalStateException("the practice head never came");
      }
      Thread.onSpinWait();
    }
    return mailbox.newest();
  }

  RackView rack() {
    return rack;
  }

  OrdersView orders() {
    return orders;
  }

  ChooseView choose() {
    return choose;
  }

  ChecksView checks() {
    return checks;
  }

  BenchView bench() {
    return bench;
  }

  /** The practice bench with the example's own instruments. */
  private record Place(CalibrationInForce inForce) implements BenchPlace {
    @Override
    public LineOpener opener() {
      return new PracticeHead(
          ExampleWorkshop.TRUE_INSTRUMENTS, PracticeOptions.BELIEVABLE, PracticeClock.real());
    }

    @Override
    public Calibration calibration() {
      return inForce.complete();
    }

    @Override
    public boolean isPractice() {
      return true;
    }
  }
}
