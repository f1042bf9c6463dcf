package sagwright;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import sagwright.bench.Calibration;
import sagwright.bench.HeadSession;
import sagwright.command.CommandFailure;
import sagwright.command.ProgramVersion;
import sagwright.command.Windows;
import sagwright.example.ExampleRack;
import sagwright.example.ExampleWorkshop;
import sagwright.job.BenchPlace;
import sagwright.job.BenchShop;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRodState;
import sagwright.job.ChecksShop;
import sagwright.job.GradeAgain;
import sagwright.job.PracticeRack;
import sagwright.screen.Mailbox;
import sagwright.screen.MainWindow;
import sagwright.screen.OnBench;
import sagwright.screen.Page;
import sagwright.screen.Shell;
import sagwright.screen.StallWatch;
import sagwright.screen.bench.BenchDesk;
import sagwright.screen.bench.BenchScreen;
import sagwright.screen.bench.BenchView;
import sagwright.screen.checks.ChecksDesk;
import sagwright.screen.checks.ChecksScreen;
import sagwright.screen.checks.ChecksView;
import sagwright.screen.settings.SettingsDesk;
import sagwright.screen.settings.SettingsScreen;
import sagwright.screen.settings.SettingsView;
import sagwright.screen.settings.ShopLook;
import sagwright.screen.theme.Theme;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Puts the window together: workshop, bench, work thread, desks and screens. */
final class WindowStart implements Windows {
  /** On the practice bench a window that stands still for longer says in the log where. */
  private static final Duration LONGEST_STALL = Duration.ofMillis(500);

  private final SpeciesTable species = SpeciesTable.published();

  @Override
  public boolean hasDisplay() {
    return !GraphicsEnvironment.isHeadless();
  }

  @Override
  public BenchPlace practiceBench(long seed) {
    return new PracticePlace(seed, new PracticeTruth(species, null));
  }

  @Override
  public void open(WindowRequest request) throws CommandFailure {
    Keeper keeper = new Keeper(InstantSource.system(), ProgramVersion.text());
    ExecutorService work = Executors.newSingleThreadExecutor(task -> new Thread(task, "work"));
    Theme.prepare();
    try {
      StartWindow.Chosen chosen =
          request.port() == null && request.workshop() == null
              ? new StartWindow(keeper, work, species)
                  .ask(request.isDark() ? Theme.DARK : Theme.LIGHT)
              : named(request, keeper);
      if (chosen != null) {
        open(request, chosen, work);
      }
    } catch (WorkshopException e) {
      throw CommandFailure.badInput(e.getMessage());
    } finally {
      work.shutdown();
    }
  }

  /** With no port, but a workshop, that workshop is for practice. */
  private static StartWindow.Chosen named(WindowRequest request, Keeper keeper)
      throws WorkshopException {
    Path file = request.workshop() == null ? Workshop.usualFile() : request.workshop();
    return new StartWindow.Chosen(Workshop.openOrCreate(file, keeper), request.port() == null);
  }

  private void open(WindowRequest request, StartWindow.Chosen chosen, Executor work)
      throws WorkshopException {
    try (Workshop workshop = chosen.workshop()) {
      if (request.port() != null) {
        workshop.requireReal();
      }
      boolean isExample = workshop.isExample();
      if (chosen.isPractice() && request.workshop() == null) {
        new PracticeRack(workshop, species).fillWhereEmpty();
      }
      CalibrationInForce inForce = new CalibrationInForce(workshop, InstantSource.system());
      CheckRodState rod = new CheckRodState(workshop, species, inForce, InstantSource.system());
      BenchPlace place;
      if (isExample) {
        place = exampleBench(request.seed(), inForce);
      } else if (chosen.isPractice()) {
        place = practiceBench(request.seed());
      } else {
        place = new SerialPlace(line(request, workshop), calibration(request, inForce), rod);
      }
      BenchShop shop = new BenchShop(workshop, species, place, InstantSource.system(), work);
      ShopLook kept = ShopLook.of(workshop.settings());
      ShopLook look = request.isDark() ? new ShopLook(Theme.DARK, kept.units()) : kept;
      showUntilClosed(shop, new Proofs(inForce, rod), new Opened(workshop, isExample), look, work);
    }
  }

  private BenchPlace exampleBench(long seed, CalibrationInForce inForce) {
    return new PracticePlace(
        seed,
        new PracticeTruth(species, new ExampleRack(species)),
        ExampleWorkshop.TRUE_INSTRUMENTS,
        inForce::complete);
  }

  /** The one that was named, else what the workshop keeps. */
  private static Supplier<Calibration> calibration(
      WindowRequest request, CalibrationInForce inForce) {
    return request.calibration() == null ? inForce::complete : request::calibration;
  }

  private static SwitchedLine line(WindowRequest request, Workshop workshop)
      throws WorkshopException {
    return request.port() == null
        ? SwitchedLine.remembered(
            workshop.settings().get(SettingsDesk.PORT).orElse(""), request.baud())
        : SwitchedLine.at(request.port(), request.baud());
  }

  /** What proves the bench. */
  private record Proofs(CalibrationInForce inForce, CheckRodState rod) {}

  /** The workshop that is open, and whether it is the example. */
  private record Opened(Workshop workshop, boolean isExample) {
    String inWords() {
      return isExample ? "the example workshop" : workshop.file().getFileName().toString();
    }
  }

  private void showUntilClosed(
      BenchShop shop, Proofs proofs, Opened opened, ShopLook look, Executor work) {
    Workshop workshop = opened.workshop();
    Mailbox<BenchView> benchMail = new Mailbox<>(BenchDesk.atFirst());
    Mailbox<SettingsView> settingsMail = new Mailbox<>(SettingsDesk.atFirst(look));
    CountDownLatch closed = new CountDownLatch(1);
    try (BenchDesk benchDesk = new BenchDesk(shop, work, benchMail)) {
      SwingUtilities.invokeLater(
          () -> {
            look.theme().install();
            Shell shell = new Shell();
            if (shop.place().isPractice()) {
              shell.mark(opened.isExample() ? "example" : "practice");
            }
            OnBench onBench = onBench(benchDesk, shell);
            ShopPages pages = new ShopPages(workshop, species, work, shell, onBench);
            SettingsDesk settingsDesk =
                new SettingsDesk(
                    workshop,
                    new GradeAgain(workshop, species),
                    shop.place().ports(),
                    work,
                    settingsMail,
                    units -> {
                      benchDesk.speakIn(units);
                      pages.speakIn(units);
                    });
            benchDesk.speakIn(look.units());
            BenchScreen bench = new BenchScreen(benchMail, benchDesk);
            shell.add(bench);
            pages.add(look.units());
            shell.add(checks(workshop, proofs, shop, benchDesk.session(), work, onBench::lay));
            shell.addAtFoot(new SettingsScreen(settingsMail, settingsDesk));
            shell.open(bench.word());
            StallWatch watch = shop.place().isPractice() ? StallWatch.begin(LONGEST_STALL) : null;
            MainWindow window =
                new MainWindow(
                    "Sagwright: " + opened.inWords(),
                    shell,
                    () -> {
                      bench.close();
                      if (watch != null) {
                        watch.close();
                      }
                      closed.countDown();
                    });
            window.setVisible(true);
          });
      closed.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static OnBench onBench(BenchDesk desk, Shell shell) {
    return new OnBench() {
      @Override
      public void lay(String tag) {
        desk.lay(tag);
        shell.open("Bench");
      }

      @Override
      public String toBeGuessed() {
        return desk.toBeGuessed();
      }
    };
  }

  private Page checks(
      Workshop workshop,
      Proofs proofs,
      BenchShop shop,
      HeadSession session,
      Executor work,
      Consumer<String> layOnBench) {
    ChecksShop checks =
        new ChecksShop(
            new ChecksShop.Ground(
                workshop,
                species,
                shop.place(),
                shop.usualSetUp(),
                InstantSource.system(),
                "Sagwright " + ProgramVersion.text()),
            proofs.inForce(),
            proofs.rod());
    Mailbox<ChecksView> mailbox = new Mailbox<>(ChecksDesk.atFirst(checks));
    ChecksDesk desk = new ChecksDesk(checks, session, work, mailbox, layOnBench);
    return new ChecksScreen(mailbox, desk);
  }
}
