package sagwright;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import sagwright.example.ExampleWorkshop;
import sagwright.screen.MainWindow;
import sagwright.screen.Reply;
import sagwright.screen.Shell;
import sagwright.screen.start.StartActions;
import sagwright.screen.start.StartScreen;
import sagwright.screen.theme.Theme;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The first window: asks which workshop to open, or whether to practise. */
final class StartWindow implements StartActions {
  private final Keeper keeper;
  private final Executor work;
  private final SpeciesTable species;
  private final CompletableFuture<Chosen> chosen = new CompletableFuture<>();

  /** A workshop that was opened, and whether it is practice. */
  record Chosen(Workshop workshop, boolean isPractice) {}

  StartWindow(Keeper keeper, Executor work, SpeciesTable species) {
    this.keeper = keeper;
    this.work = work;
    this.species = species;
  }

  /** Shows the window and waits; null where it was closed without an answer. */
  Chosen ask(Theme theme) {
    SwingUtilities.invokeLater(
        () -> {
          theme.install();
          Shell shell = new Shell();
          shell.add(new StartScreen(Workshop.usualFile(), this));
          shell.open("Start");
          MainWindow window = new MainWindow("Sagwright", shell, () -> chosen.complete(null));
          chosen.whenComplete((answer, failure) -> SwingUtilities.invokeLater(window::dispose));
          window.setVisible(true);
        });
    return chosen.join();
  }

  @Override
  public void openWorkshop(Path file, Reply reply) {
    open(file, false, reply);
  }

  @Override
  public void practise(Reply reply) {
    open(Workshop.practiceFile(), true, reply);
  }

  @Override
  public void openExample(Consumer<String> progress, Reply reply) {
    Path file = Workshop.exampleFile();
    open(
        reply,
        true,
        () -> {
          if (!Files.exists(file)) {
            new ExampleWorkshop(species, keeper.program())
                .make(file, LocalDate.now(ZoneId.systemDefault()), percent(progress));
          }
          Workshop workshop = Workshop.open(file, keeper);
          if (!workshop.isExample()) {
            workshop.close();
            throw new WorkshopException(file + " is another workshop: move it away first");
          }
          return workshop;
        });
  }

  /** Told once a percent, not once a step. */
  private static ExampleWorkshop.Progress percent(Consumer<String> progress) {
    int[] told = {-1};
    return (done, of) -> {
      int percent = 100 * done / of;
      if (percent != told[0]) {
        told[0] = percent;
        progress.accept("Making the example workshop: " + percent + " %.");
      }
    };
  }

  private interface Opening {
    Workshop workshop() throws WorkshopException;
  }

  private void open(Path file, boolean isPractice, Reply reply) {
    open(reply, isPractice, () -> Workshop.openOrCreate(file, keeper));
  }

  private void open(Reply reply, boolean isPractice, Opening opening) {
    work.execute(
        () -> {
          try {
            Workshop workshop = opening.workshop();
            if (chosen.complete(new Chosen(workshop, isPractice))) {
              reply.done();
            } else {
              workshop.close(); // the window went while the file was being opened
            }
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }
}
