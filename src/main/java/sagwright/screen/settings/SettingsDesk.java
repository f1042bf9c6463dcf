package sagwright.screen.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import sagwright.finish.ButtBore;
import sagwright.grade.Sureness;
import sagwright.grade.WordScale;
import sagwright.job.ChangedSettings;
import sagwright.job.GradeAgain;
import sagwright.job.GuessFirst;
import sagwright.job.HeadPorts;
import sagwright.job.ShopSettings;
import sagwright.screen.Desk;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** What stands behind the settings page. */
public final class SettingsDesk extends Desk implements SettingsActions {
  /** Where the bench head was last, as text. */
  public static final String PORT = "bench head";

  private final Workshop workshop;
  private final GradeAgain gradeAgain;
  private final HeadPorts ports;
  private final Mailbox<SettingsView> mailbox;
  private final Consumer<ShopUnits> speakIn;
  private final ChangedSettings changed;

  /**
   * @param gradeAgain for when the shop wants to be surer than before, or less
   * @param speakIn hears, on the event thread, the units that hold from now on
   */
  public SettingsDesk(
      Workshop workshop,
      GradeAgain gradeAgain,
      HeadPorts ports,
      Executor work,
      Mailbox<SettingsView> mailbox,
      Consumer<ShopUnits> speakIn) {
    super(work);
    this.gradeAgain = gradeAgain;
    this.speakIn = speakIn;
    this.workshop = workshop;
    this.changed = new ChangedSettings(workshop);
    this.ports = ports;
    this.mailbox = mailbox;
  }

  /** What the page shows before the settings were read. */
  public static SettingsView atFirst(ShopLook look) {
    return new SettingsView(
        List.of(),
        "",
        look.theme(),
        look.units(),
        100 * Sureness.USUAL.chance(),
        WordScale.AT_FIRST.words(),
        "",
        false,
        ButtBore.USUAL,
        "",
        "");
  }

  @Override
  public void look() {
    atWork(this::show);
  }

  private void show() throws WorkshopException {
    Settings settings = workshop.settings();
    ShopLook look = ShopLook.of(settings);
    ShopSettings shop = new ShopSettings(workshop);
    mailbox.put(
        new SettingsView(
            ports.names(),
            ports.chosen(),
            look.theme(),
            look.units(),
            Math.round(1e8 * shop.sureness().chance()) / 1e6,
            shop.wordScale().words(),
            settings.get(Settings.INITIALS).orElse(""),
            new GuessFirst(workshop).isOn(),
            shop.buttBore(),
            workshop.file().toString(),
            backupToday().toString()));
  }

  /** Beside the workshop's own file, by the day: 2026-03-02-workshop.db. */
  private Path backupToday() {
    Path file = workshop.file();
    return file.resolveSibling(LocalDate.now(ZoneId.systemDefault()) + "-" + file.getFileName());
  }

  private void set(String what, String name, String value, Reply reply) {
    set(what, name, reply, () -> workshop.settings().set(name, value));
  }

  /** Sets what Ctrl Z takes back. */
  private void set(String what, String name, Reply reply, ChangedSettings.Step step) {
    atWork(
        reply,
        () -> {
          changed.set(what, List.of(name), step, () -> {});
          show();
        });
  }

  @Override
  public void takeBack(Consumer<String> say) {
    atWork(
        Reply.onEventThread(() -> {}, say),
        () -> {
          Optional<String> what = changed.takeBack();
          show();
          String line = what.map(w -> "Taken back: " + w + ".").orElse("Nothing to take back.");
          SwingUtilities.invokeLater(() -> say.accept(line));
        });
  }

  @Override
  public void listenTo(String port, Reply reply) {
    atWork(
        reply,
        () -> {
          String before = ports.chosen();
          changed.set(
              "bench head",
              List.of(PORT),
              () -> {
                ports.choose(port);
                workshop.settings().set(PORT, ports.asText());
              },
              () -> ports.choose(before));
          show();
        });
  }

  @Override
  public void wear(Theme theme, Reply reply) {
    set("colours", ShopLook.COLOURS, theme.name(), reply);
  }

  @Override
  public void measureIn(ShopUnits units, Reply reply) {
    Reply kept =
        Reply.onEventThread(
            () -> {
              speakIn.accept(units);
              reply.done();
            },
            reply::refused);
    atWork(
        kept,
        () -> {
          changed.set(
              "units",
              List.of(ShopLook.LENGTHS, ShopLook.MASSES),
              () -> {
                workshop.settings().set(ShopLook.LENGTHS, units.length().name());
                workshop.settings().set(ShopLook.MASSES, units.mass().name());
              },
              this::speakAsSet);
          show();
        });
  }

  private void speakAsSet() throws WorkshopException {
    ShopUnits units = ShopLook.of(workshop.settings()).units();
    SwingUtilities.invokeLater(() -> speakIn.accept(units));
  }

  @Override
  public void beSure(double percent, Reply reply) {
    if (!(percent > 50 && percent < 100)) {
      reply.refused("sure from: above 50 and below 100 %, not " + percent);
      return;
    }
    atWork(
        reply,
        () -> {
          changed.set(
              "sure from",
              List.of(Settings.SURENESS),
              () -> new ShopSettings(workshop).setSureness(new Sureness(percent / 100)),
              gradeAgain::all);
          gradeAgain.all();
          show();
        });
  }

  @Override
  public void call(List<String> words, Reply reply) {
    set(
        "words",
        Settings.SCALE_WORDS,
        reply,
        () -> new ShopSettings(workshop).setScaleWords(words));
  }

  @Override
  public void backUpTo(String file, Reply reply) {
    atWork(
        reply,
        () -> {
          try {
            workshop.backUpTo(Path.of(file));
          } catch (InvalidPathException e) {
            throw new WorkshopException("no file can be called " + file);
          }
        });
  }

  @Override
  public void signAs(String initials, Reply reply) {
    set("initials", Settings.INITIALS, initials, reply);
  }

  @Override
  public void guessFirst(boolean on, Reply reply) {
    set("guess first", Settings.GUESS_FIRST, reply, () -> new GuessFirst(workshop).set(on));
  }

  @Override
  public void boreButts(ButtBore bore, Reply reply) {
    set("butt bore", Settings.BUTT_BORE, reply, () -> new ShopSettings(workshop).setButtBore(bore));
  }
}
