package sagwright.screen.settings;

import com.formdev.flatlaf.FlatLaf;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.ObjDoubleConsumer;
import javax.accessibility.AccessibleContext;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;

/** The settings, each of which holds as soon as it is chosen or Enter is pressed. */
public final class SettingsScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final List<String> THEMES = List.of("light", "dark");
  private static final List<Unit> LENGTHS = List.of(Unit.MILLIMETRE, Unit.INCH);
  private static final List<Unit> MASSES = List.of(Unit.GRAM, Unit.OUNCE);

  private final transient SettingsActions actions;
  private final transient Refresh<SettingsView> refresh;
  private final JPanel body =
      new JPanel(new MigLayout("insets 8 0 0 0, gap 14 6, hidemode 3", "[]30[320::,fill]14[grow]"));
  private final JComboBox<String> port = choice("port", List.of());
  private final JLabel line = Text.second("");
  private final JComboBox<String> theme = choice("colours", THEMES);
  private final JComboBox<String> length = choice("lengths in", symbols(LENGTHS));
  private final JComboBox<String> mass = choice("masses in", symbols(MASSES));
  private final JTextField sureness = field("sure from");
  private final JTextField safeShare = field("safe load");
  private final JTextField initials = field("initials");
  private final JTextField calibration = field("calibration file");
  private final JLabel calibrationNow = Text.second("");
  private final JLabel workshop = Text.plain("");
  private transient SettingsView view;
  private boolean showing;
  private String complaint = "";

  public SettingsScreen(Mailbox<SettingsView> mailbox, SettingsActions actions) {
    super("Settings");
    this.actions = actions;
    this.view = mailbox.newest();
    JPanel head = head("[]14[grow]", Text.title("Settings"), Text.second("each holds at once"));
    row("bench head", port, line);
    row("calibration file", calibration, calibrationNow);
    row(
        "safe load",
        safeShare,
        Text.second("% of the species' bending strength; common practice is 25"));
    row("sure from", sureness, Text.second("% chance on: then a shaft meets an ask, or does not"));
    row("colours", theme, Text.second(""));
    row("lengths in", length, Text.second("any other unit may be typed"));
    row("masses in", mass, Text.second(""));
    row("initials", initials, Text.second("sign what is done from now on"));
    row("workshop", workshop, Text.second(""));
    fill(head, body);
    wire();
    this.refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
  }

  private static List<String> symbols(List<Unit> units) {
    return units.stream().map(Unit::symbol).toList();
  }

  private static JComboBox<String> choice(String name, List<String> words) {
    JComboBox<String> choice = new JComboBox<>(words.toArray(String[]::new));
    named(choice, name);
    return choice;
  }

  private static JTextField field(String name) {
    JTextField field = new JTextField();
    named(field, name);
    return field;
  }

  private static void named(JComponent component, String name) {
    component.setName("settings." + name);
    component.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, name);
  }

  private void row(String name, JComponent field, JLabel note) {
    JLabel label = Text.plain(name);
    label.setLabelFor(field);
    body.add(label);
    body.add(field, "growx, hmin 44");
    body.add(note, "wmin 0, wrap");
  }

  private void wire() {
    control().say("Look for ports", "F5");
    control().addActionListener(e -> actions.lookForPorts());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_F5, 0), actions::lookForPorts);
    port.addActionListener(
        e -> chosen(() -> actions.listenTo(String.valueOf(port.getSelectedItem()))));
    theme.addActionListener(e -> chosen(this::wear));
    length.addActionListener(e -> chosen(this::measure));
    mass.addActionListener(e -> chosen(this::measure));
    initials.addActionListener(e -> actions.signAs(initials.getText().trim()));
    calibration.addActionListener(
        e -> actions.calibrateBy(calibration.getText().trim(), reply("calibration file")));
    sureness.addActionListener(e -> percent("sure from", sureness, (r, p) -> actions.beSure(p, r)));
    safeShare.addActionListener(
        e -> percent("safe load", safeShare, (r, p) -> actions.loadSafely(p, r)));
  }

  /** Only what a person chooses counts, not what the view fills in. */
  private void chosen(Runnable run) {
    if (!showing) {
      run.run();
    }
  }

  private void wear() {
    Theme next = Theme.values()[theme.getSelectedIndex()];
    next.install();
    FlatLaf.updateUI();
    actions.wear(next);
  }

  private void measure() {
    actions.measureIn(
        new ShopUnits(LENGTHS.get(length.getSelectedIndex()), MASSES.get(mass.getSelectedIndex())));
  }

  private void percent(String name, JTextField field, ObjDoubleConsumer<Reply> keep) {
    try {
      keep.accept(reply(name), Typed.quantity(name, field.getText(), Unit.PERCENT));
    } catch (ComplaintException e) {
      complain(e.getMessage());
    }
  }

  private Reply reply(String name) {
    return Reply.onEventThread(() -> complain(name + " is kept"), this::complain);
  }

  private void complain(String words) {
    complaint = words;
    words();
  }

  @Override
  public void opened() {
    complaint = "";
    refresh.start();
    port.requestFocusInWindow();
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void show(SettingsView next) {
    view = next;
    showing = true;
    port.setModel(new DefaultComboBoxModel<>(next.ports().toArray(String[]::new)));
    port.setSelectedItem(next.port().isEmpty() ? null : next.port());
    line.setText(next.line());
    theme.setSelectedIndex(next.theme().ordinal());
    length.setSelectedItem(next.units().length().symbol());
    mass.setSelectedItem(next.units().mass().symbol());
    show(sureness, Figures.asTyped(next.surenessPercent()));
    show(safeShare, Figures.asTyped(next.safeSharePercent()));
    show(initials, next.initials());
    calibrationNow.setText(next.calibration());
    workshop.setText(next.workshop());
    showing = false;
    words();
  }

  private static void show(JTextField field, String text) {
    if (!field.isFocusOwner()) {
      field.setText(text);
    }
  }

  private void words() {
    foot()
        .say(
            complaint.isEmpty() ? "Type and press Enter, or choose." : complaint,
            "A head that is plugged in later is found by F5.");
  }
}
