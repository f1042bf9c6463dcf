package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.SpectrumPlot;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** How the line to the head does, with the spectrum of the load at rest. */
final class HealthCard extends CheckCard {
  private static final long serialVersionUID = 1L;

  private final transient ChecksActions actions;
  private final HealthPicture figures = new HealthPicture("health.figures", true);
  private final SpectrumPicture spectrum = new SpectrumPicture();

  HealthCard(ChecksActions actions, Speech speech) {
    super(
        "health",
        "Line to the head",
        speech,
        new MigLayout("insets 0, gap 30 0", "[50%,fill][grow,fill]", "[grow,fill]"));
    this.actions = actions;
    figures.setFocusable(true);
    add(figures, "grow");
    add(spectrum, "grow, hmin 200");
  }

  @Override
  String details() {
    return "over the last minute; noise, drift and hum mean something while nothing touches it";
  }

  @Override
  String foot() {
    return "One file for whoever helps: no names, no blanks, no orders in it.";
  }

  @Override
  String keys() {
    return "The file is written beside the workshop's own.  Esc goes back.";
  }

  @Override
  String control() {
    return "Write the file";
  }

  @Override
  void press() {
    actions.writeHealthFile(
        new ChecksActions.FileReply() {
          @Override
          public void written(String file) {
            SwingUtilities.invokeLater(() -> say("Written: " + file));
          }

          @Override
          public void refused(String why) {
            SwingUtilities.invokeLater(() -> say(why));
          }
        });
  }

  @Override
  void takeBack() {
    say("there is nothing here to take back");
  }

  @Override
  void begin() {
    figures.requestFocusInWindow(); // nothing is typed here, and no other page is meant
  }

  @Override
  void show(ChecksView view) {
    figures.show(view.health());
    spectrum.health = view.health();
    spectrum.repaint();
  }

  private static final class SpectrumPicture extends Picture {
    private static final long serialVersionUID = 1L;

    private transient ChecksView.Health health = ChecksView.Health.NONE;

    SpectrumPicture() {
      super("health.spectrum", new Dimension(420, 300));
    }

    private boolean hasSpectrum() {
      return health.report() != null && health.report().spectrum().amplitudeN().length > 0;
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      Style style = Theme.style();
      if (!hasSpectrum()) {
        TextLine.of(
                "what the load at rest hums with is drawn here once readings come",
                style.lettering().regular(16),
                style.palette().secondInk())
            .fromLeft(g, 0, 24);
        return;
      }
      double[] shown = health.report().spectrum().amplitudeN().clone();
      double scale = health.inCounts() ? 1 : 1000;
      for (int i = 0; i < shown.length; i++) {
        shown[i] *= scale;
      }
      var hum = health.report().hum();
      new SpectrumPlot(style)
          .paint(
              g,
              area,
              new SpectrumPlot.Scene(
                  health.report().spectrum().stepHz(),
                  shown,
                  health.inCounts() ? "counts" : "mN",
                  hum.isPresent() ? hum.get().shownAtHz() : Double.NaN,
                  hum.isPresent() ? hum.get().mainsHz() + " Hz mains" : ""));
    }

    @Override
    protected String describe() {
      return hasSpectrum() ? "spectrum of the load at rest" : "no spectrum yet";
    }
  }
}
