package sagwright.screen.settings;

import java.util.List;
import java.util.concurrent.Executor;
import sagwright.grade.Sureness;
import sagwright.job.GradeAgain;
import sagwright.job.GuessFirst;
import sagwright.job.HeadPorts;
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

  /**
   * @param gradeAgain for when the shop wants to be surer than before, or less
   */
  public SettingsDesk(
      Workshop workshop,
      GradeAgain gradeAgain,
      HeadPorts ports,
      Executor work,
      Mailbox<SettingsView> mailbox) {
    super(work);
    this.gradeAgain = gradeAgain;
    this.workshop = workshop;
    this.ports = ports;
    this.mailbox = mailbox;
  }

  /** What the page shows before the settings were read. */
  public static SettingsView atFirst(ShopLook look) {
    return new SettingsView(
        List.of(), "", look.theme(), look.units(), 100 * Sureness.USUAL.chance(), "", false, "");
  }

  @Override
  public void look() {
    atWork(this::show);
  }

  private void show() throws WorkshopException {
    Settings settings = workshop.settings();
    ShopLook look = ShopLook.of(settings);
    double sureness =
        settings.get(Settings.SURENESS).map(Double::valueOf).orElse(Sureness.USUAL.chance());
    mailbox.put(
        new SettingsView(
            ports.names(),
            ports.chosen(),
            look.theme(),
            look.units(),
            Math.round(1e8 * sureness) / 1e6,
            settings.get(Settings.INITIALS).orElse(""),
            new GuessFirst(workshop).isOn(),
            workshop.file().toString()));
  }

  private void set(String name, String value, Reply reply) {
    atWork(
        reply,
        () -> {
          workshop.settings().set(name, value);
          show();
        });
  }

  @Override
  public void listenTo(String port, Reply reply) {
    atWork(
        reply,
        () -> {
          ports.choose(port);
          workshop.settings().set(PORT, ports.asText());
          show();
        });
  }

  @Override
  public void wear(Theme theme, Reply reply) {
    set(ShopLook.COLOURS, theme.name(), reply);
  }

  @Override
  public void measureIn(ShopUnits units, Reply reply) {
    atWork(
        reply,
        () -> {
          workshop.settings().set(ShopLook.LENGTHS, units.length().name());
          workshop.settings().set(ShopLook.MASSES, units.mass().name());
          show();
        });
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
          workshop.settings().set(Settings.SURENESS, Double.toString(percent / 100));
          gradeAgain.all();
          show();
        });
  }

  @Override
  public void signAs(String initials, Reply reply) {
    set(Settings.INITIALS, initials, reply);
  }

  @Override
  public void guessFirst(boolean on, Reply reply) {
    atWork(
        reply,
        () -> {
          new GuessFirst(workshop).set(on);
          show();
        });
  }
}
