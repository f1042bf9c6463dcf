package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.LoadDeflectionPlot;
import sagwright.drawing.LoadDeflectionScene;
import sagwright.drawing.PlottedRun;
import sagwright.quantity.TypedQuantity;
import sagwright.quantity.Unit;
import sagwright.quantity.UnreadableQuantityException;
import sagwright.screen.Reply;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;

/**
 * A run read by hand: what was hung and what the dial showed, line by line. Enter goes on; Enter on
 * an empty line keeps the run.
 */
final class HandReadForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 10;
  private static final int LEAST_PAIRS = 3;

  private final List<JTextField> hung = new ArrayList<>();
  private final List<JTextField> dial = new ArrayList<>();
  private final JRadioButton masses = new JRadioButton("masses hung, g", true);
  private final JRadioButton loads = new JRadioButton("loads, N");
  private final JLabel complaint = Text.strong(" ");
  private final Points points = new Points();
  private final BenchActions actions;
  private final Runnable back;

  HandReadForm(BenchActions actions, Runnable back) {
    super(new MigLayout("insets 0, gap 12 2", "[24!][150!][150!]40[grow,fill]", ""));
    this.actions = actions;
    this.back = back;
    setName("handRead");
    ButtonGroup kind = new ButtonGroup();
    kind.add(masses);
    kind.add(loads);
    masses.setName("handRead.masses");
    loads.setName("handRead.loads");
    masses.addActionListener(e -> redraw());
    loads.addActionListener(e -> redraw());
    add(Text.heading("A run read by hand"), "span 3, wrap 4");
    add(
        Text.second("Wait until the dial stands, then read. Three pairs at least."),
        "span 4, wrap 6");
    add(masses, "span 3, split 2, height 44!");
    add(loads, "height 44!, wrap 4");
    add(new JLabel());
    add(Text.note("hung"));
    add(Text.note("dial, mm"));
    add(points, "spany " + (LINES + 1) + ", growy, pushy, wrap");
    for (int i = 0; i < LINES; i++) {
      line(i);
    }
    complaint.setName("handRead.complaint");
    add(complaint, "span 4, gaptop 6, wrap");
    QuietButton leave = new QuietButton("handRead.back", "back to the bench", "Esc");
    leave.addActionListener(e -> back.run());
    add(leave, "span 4");
  }

  private void line(int i) {
    JTextField load = field("hung " + (i + 1));
    JTextField gauge = field("dial " + (i + 1));
    hung.add(load);
    dial.add(gauge);
    add(Text.note(String.valueOf(i + 1)), "alignx right");
    add(load, "growx, height 44!");
    add(gauge, "growx, height 44!, wrap");
    load.addActionListener(
        e -> {
          if (load.getText().isBlank() && gauge.getText().isBlank()) {
            keep();
          } else {
            gauge.requestFocusInWindow();
          }
        });
    gauge.addActionListener(e -> next(i));
  }

  private JTextField field(String says) {
    JTextField field = new JTextField();
    field.setName("handRead." + says.replace(" ", ""));
    field.setHorizontalAlignment(SwingConstants.TRAILING);
    field.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, says);
    field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), "none");
    return field;
  }

  private void next(int line) {
    redraw();
    if (line + 1 < LINES) {
      hung.get(line + 1).requestFocusInWindow();
    } else {
      keep();
    }
  }

  /** Empties the form and goes to its first field. */
  void begin() {
    hung.forEach(f -> f.setText(""));
    dial.forEach(f -> f.setText(""));
    complaint.setText(" ");
    redraw();
    hung.get(0).requestFocusInWindow();
  }

  /** Sends what is typed, or says what is wrong with it. */
  void keep() {
    try {
      BenchActions.HandRead read = read();
      if (read.hung().size() < LEAST_PAIRS) {
        complaint.setText("Three pairs at least: " + read.hung().size() + " so far.");
        return;
      }
      complaint.setText(" ");
      actions.keepHandRead(read, Reply.onEventThread(back, complaint::setText));
    } catch (UnreadableQuantityException e) {
      complaint.setText(e.getMessage());
    }
  }

  private BenchActions.HandRead read() throws UnreadableQuantityException {
    List<Double> loadsRead = new ArrayList<>();
    List<Double> dialRead = new ArrayList<>();
    Unit unit = masses.isSelected() ? Unit.GRAM : Unit.NEWTON;
    for (int i = 0; i < LINES; i++) {
      boolean noLoad = hung.get(i).getText().isBlank();
      boolean noDial = dial.get(i).getText().isBlank();
      if (noLoad && noDial) {
        continue;
      }
      loadsRead.add(TypedQuantity.parse(hung.get(i).getText(), unit));
      dialRead.add(TypedQuantity.parse(dial.get(i).getText(), Unit.MILLIMETRE));
    }
    return new BenchActions.HandRead(masses.isSelected(), loadsRead, dialRead);
  }

  private void redraw() {
    try {
      points.show(read());
    } catch (UnreadableQuantityException e) {
      // half a line is typed: the picture waits for the rest
      points.repaint();
    }
  }

  /** The pairs as points; in grams or newtons as they are typed. */
  private static final class Points extends Picture {
    private static final long serialVersionUID = 1L;

    private transient PlottedRun run =
        new PlottedRun(new double[0], new double[0], PlottedRun.Kind.HAND_READ);

    Points() {
      super("handRead.points", new Dimension(360, 300));
    }

    void show(BenchActions.HandRead read) {
      run =
          new PlottedRun(
              fromLeast(read.dialMm()), fromLeast(read.hung()), PlottedRun.Kind.HAND_READ);
      repaint();
    }

    private static double[] fromLeast(List<Double> values) {
      double least = values.stream().mapToDouble(v -> v).min().orElse(0);
      return values.stream().mapToDouble(v -> v - least).toArray();
    }

    @Override
    protected void paint(Graphics2D g, Rectangle2D area) {
      new LoadDeflectionPlot(Theme.style())
          .paint(
              g,
              area,
              new LoadDeflectionScene(
                  List.of(run),
                  null,
                  Double.NaN,
                  greatest(run.deflectionMm()),
                  greatest(run.loadN())));
    }

    private static double greatest(double[] values) {
      double greatest = 1;
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
