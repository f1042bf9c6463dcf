package sagwright;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import javax.swing.SwingUtilities;
import sagwright.screen.MainWindow;
import sagwright.screen.Reply;
import sagwright.screen.Shell;
import sagwright.screen.start.StartActions;
import sagwright.screen.start.StartScreen;
import sagwright.screen.theme.Theme;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The first window: asks which workshop to open, or whether to practise. */
final class StartWindow implements StartActions {
  private final Keeper keeper;
  private final Executor work;
  private final CompletableFuture<Chosen> chosen = new CompletableFuture<>();

  /** A workshop that was opened, and whether it is practice. */
  record Chosen(Workshop workshop, boolean isPractice) {}

  StartWindow(Keeper keeper, Executor work) {
    this.keeper = keeper;
    this.work = work;
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

  private void open(Path file, boolean isPractice, Reply reply) {
    work.execute(
        () -> {
          try {
            Workshop workshop = Workshop.openOrCreate(file, keeper);
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
