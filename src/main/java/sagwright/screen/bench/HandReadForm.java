package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import sagwright.check.LocalGravity;
import sagwright.drawing.LoadDeflectionPlot;
import sagwright.drawing.LoadDeflectionScene;
import sagwright.drawing.PlottedRun;
import sagwright.drawing.TextLine;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Reply;
import sagwright.screen.Typed;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;

/** A run read by hand: what was hung and what the dial showed, pair by pair. */
final class HandReadForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 8;
  private static final int LEAST_PAIRS = 3;

  private final JRadioButton masses = new JRadioButton("masses hung, g", true);
  private final JRadioButton loads = new JRadioButton("loads, N");
  private final FieldGrid pairs =
      new FieldGrid("handRead.pairs", List.of("hung", "dial, mm"), LINES, this::keep, this::redraw);
  private final JLabel care = Text.label("", 20, true);
  private final Points points = new Points();
  private final transient BenchActions actions;
  private final transient Runnable back;
  private final transient Consumer<String> complain;

  /**
   * @param back to the live bench
   * @param complain hears what is wrong with what is typed
   */
  HandReadForm(BenchActions actions, Runnable back, Consumer<String> complain) {
    super(new MigLayout("insets 8 0 0 0, gap 40 6", "[][grow,fill]", "[][][][][grow,fill][]"));
    this.actions = actions;
    this.back = back;
    this.complain = complain;
    setName("handRead");
    ButtonGroup kind = new ButtonGroup();
    for (JRadioButton each : new JRadioButton[] {masses, loads}) {
      kind.add(each);
      each.addActionListener(e -> redraw());
    }
    masses.setName("handRead.masses");
    loads.setName("handRead.loads");
    add(Text.heading("A run read by hand"), "");
    add(points, "spany 6, grow, push, wrap");
    add(care, "wrap");
    add(Text.second("Wait until the dial stands, then read it."), "wrap");
    add(masses, "split 2, hmin 44");
    add(loads, "hmin 44, wrap");
    JScrollPane scroll = Lists.scrolled(pairs);
    add(scroll, "grow, hmin 100, wrap");
    add(new QuietButton("handRead.back", "back to the bench", "Esc", back), "");
  }

  /**
   * Empties the form and goes to its first field.
   *
   * @param safeLoadN what the shaft may take
   */
  void begin(double safeLoadN) {
    care.setText(
        String.format(
            Locale.ROOT,
            "<html>Hang no more than %.0f g (%.0f N).<br>Weights fall: keep feet clear.</html>",
            Math.floor(100 * safeLoadN / LocalGravity.STANDARD_CGPM_1901.metresPerSecondSquared())
                * 10,
            Math.floor(safeLoadN)));
    pairs.fill(List.of());
    pairs.focusFirst();
  }

  /** Sends what is typed, or says what is wrong with it. */
  void keep() {
    try {
      BenchActions.HandRead read = read();
      if (read.hung().size() < LEAST_PAIRS) {
        complain.accept("Three pairs at least; so far there are " + read.hung().size() + ".");
        return;
      }
      actions.keepHandRead(read, Reply.onEventThread(back, complain));
    } catch (ComplaintException e) {
      complain.accept(e.getMessage());
      pairs.focusOn(e.field());
    }
  }

  private BenchActions.HandRead read() throws ComplaintException {
    List<Double> hung = new ArrayList<>();
    List<Double> dial = new ArrayList<>();
    Unit unit = masses.isSelected() ? Unit.GRAM : Unit.NEWTON;
    for (FieldGrid.Line line : pairs.typed()) {
      String at = "pair " + line.number() + ", ";
      hung.add(Typed.quantity(at + "hung", line.texts().get(0), unit));
      dial.add(Typed.quantity(at + "dial", line.texts().get(1), Unit.MILLIMETRE));
    }
    return new BenchActions.HandRead(masses.isSelected(), hung, dial);
  }

  private void redraw() {
    try {
      points.show(read());
    } catch (ComplaintException e) {
      points.repaint(); // half a line is typed: the picture waits for the rest
    }
  }

  /** The pairs as points, as they are typed: in grams or newtons. */
  private static final class Points extends Picture {
    private static final long serialVersionUID = 1L;

    private transient PlottedRun run =
        new PlottedRun(new double[0], new double[0], PlottedRun.Kind.HAND_READ);
    private String unit = "g";

    Points() {
      super("handRead.points", new Dimension(360, 300));
    }

    void show(BenchActions.HandRead read) {
      run =
          new PlottedRun(
              fromLeast(read.dialMm()), fromLeast(read.hung()), PlottedRun.Kind.HAND_READ);
      unit = read.massesHung() ? "g" : "N";
      repaint();
    }

    private static double[] fromLeast(List<Double> values) {
      double least = values.stream().mapToDouble(v -> v).min().orElse(0);
      return values.stream().mapToDouble(v -> v - least).toArray();
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      LoadDeflectionScene scene =
          new LoadDeflectionScene(
              List.of(run),
              null,
              Double.NaN,
              greatest(run.deflectionMm(), 10),
              greatest(run.loadN(), "g".equals(unit) ? 2000 : 20));
      new LoadDeflectionPlot(Theme.style()).paint(g, area, scene, unit);
      if (run.loadN().length == 0) {
        TextLine.of(
                "each pair appears here: hung up, dial across",
                Theme.style().lettering().regular(14),
                Theme.style().palette().secondInk())
            .centred(g, area.getCenterX(), area.getCenterY());
      }
    }

    private static double greatest(double[] values, double least) {
      double greatest = values.length == 0 ? least : 1;
      for (double value : values) {
        greatest = Math.max(greatest, value * 1.08);
      }
      return greatest;
    }

    @Override
    protected String describe() {
      return run.loadN().length + " pairs";
    }
  }
}
