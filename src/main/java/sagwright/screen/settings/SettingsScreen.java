package sagwright.screen.settings;

import com.formdev.flatlaf.FlatLaf;
import java.awt.event.InputEvent;
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
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import sagwright.finish.ButtBore;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.theme.Leaving;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;

/** The settings, each of which holds as soon as it is chosen or Enter is pressed. */
public final class SettingsScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final List<String> NO_OR_YES = List.of("no", "yes");
  private static final List<String> THEMES = List.of("light", "dark");
  private static final List<Unit> LENGTHS = List.of(Unit.MILLIMETRE, Unit.INCH);
  private static final List<Unit> MASSES = List.of(Unit.GRAM, Unit.OUNCE);

  private final transient SettingsActions actions;
  private final transient Mailbox<SettingsView> mailbox;
  private final transient Refresh<SettingsView> refresh;
  private final JPanel body =
      new JPanel(new MigLayout("insets 8 0 0 0, gap 14 6, hidemode 3", "[]30[41%,fill]14[grow]"));
  private final JComboBox<String> port = choice("port", List.of());
  private final JComboBox<String> theme = choice("colours", THEMES);
  private final JComboBox<String> length = choice("lengths in", symbols(LENGTHS));
  private final JComboBox<String> mass = choice("masses in", symbols(MASSES));
  private final JTextField sureness = field("sure from");
  private final JTextField words = field("words");
  private final JTextField initials = field("initials");
  private final JComboBox<String> guess = choice("guess first", NO_OR_YES);
  private final JTextField bore = field("butt bore");
  private final JTextField backup = field("back up to");
  private final JLabel workshop = Text.plain("");
  private transient SettingsView view;
  private transient Theme worn;
  private boolean showing;

  /** Answers that are still to come: until then a view may be from before what was set. */
  private int awaited;

  private String complaint = "";

  public SettingsScreen(Mailbox<SettingsView> mailbox, SettingsActions actions) {
    super("Settings");
    this.actions = actions;
    this.mailbox = mailbox;
    this.view = mailbox.newest();
    this.worn = view.theme();
    JPanel head = head("[]14[grow]", Text.title("Settings"), Text.second("each holds at once"));
    row("bench head", port, Text.second("Ctrl P looks for one that was plugged in since"));
    row("sure from", sureness, Text.second("% chance on: then a shaft meets an ask, or does not"));
    row("colours", theme, Text.second(""));
    row("lengths in", length, Text.second("any other unit may be typed"));
    row("masses in", mass, Text.second(""));
    row("words", words, Text.second("of the scale, soft to stiff; a comma between them"));
    row("initials", initials, Text.second("sign what is done from now on"));
    row(
        "guess first",
        guess,
        Text.second("the hand says how stiff a blank is, before the bench does"));
    row("butt bore", bore, Text.second("mm for lead: left closed, how deep, how wide"));
    row("workshop", workshop, Text.second(""));
    row("back up to", backup, Text.second("Enter writes a whole copy and looks it through"));
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
    JTextField field = new JTextField(20);
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
    control().say("Look for ports", "Ctrl P");
    control().addActionListener(e -> actions.look());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_P, InputEvent.CTRL_DOWN_MASK), actions::look);
    key(
        KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK),
        () -> {
          awaited++;
          actions.takeBack(this::tookBack);
        });
    port.addActionListener(e -> chosen(this::listen));
    theme.addActionListener(e -> chosen(this::wear));
    length.addActionListener(e -> chosen(this::measure));
    mass.addActionListener(e -> chosen(this::measure));
    guess.addActionListener(
        e -> chosen(() -> actions.guessFirst(guess.getSelectedIndex() == 1, reply("guess first"))));
    Leaving.keeps(initials, () -> actions.signAs(initials.getText().trim(), reply("initials")));
    Leaving.keeps(
        words,
        () -> actions.call(List.of(words.getText().trim().split("\\s*,\\s*")), reply("words")));
    Leaving.keeps(bore, this::bore);
    backup.addActionListener(
        e -> {
          String file = backup.getText().trim();
          actions.backUpTo(
              file,
              Reply.onEventThread(
                  () -> complain("The copy is whole: " + file + ".  Keep it on another disk too."),
                  this::complain));
        });
    Leaving.keeps(sureness, () -> percent("sure from", sureness, (r, p) -> actions.beSure(p, r)));
  }

  /** Only what a person chooses counts, not what the view fills in. */
  private void chosen(Runnable run) {
    if (!showing) {
      run.run();
    }
  }

  private void wear() {
    Theme next = Theme.values()[theme.getSelectedIndex()];
    SwingUtilities.invokeLater(() -> wearNow(next)); // the choice is still at its key
    actions.wear(next, reply("colours"));
  }

  /** The view is there already, and what is being typed gives way to it. */
  private void tookBack(String line) {
    answered();
    fill(true);
    if (view.theme() != worn) {
      wearNow(view.theme());
    }
    complain(line);
  }

  private void answered() {
    awaited--;
    show(mailbox.newest());
  }

  private void wearNow(Theme next) {
    worn = next;
    next.install();
    FlatLaf.updateUI();
  }

  private void measure() {
    actions.measureIn(
        new ShopUnits(LENGTHS.get(length.getSelectedIndex()), MASSES.get(mass.getSelectedIndex())),
        reply("units"));
  }

  private void listen() {
    actions.listenTo(String.valueOf(port.getSelectedItem()), reply("bench head"));
  }

  private void percent(String name, JTextField field, ObjDoubleConsumer<Reply> keep) {
    try {
      keep.accept(reply(name), Typed.quantity(name, field.getText(), Unit.PERCENT));
    } catch (ComplaintException e) {
      complain(e.getMessage());
    }
  }

  private void bore() {
    String[] parts = bore.getText().trim().split("[,;\\s]+");
    if (parts.length != 3) {
      complain("butt bore: three lengths, as " + inWords(ButtBore.USUAL));
      return;
    }
    double[] mm = new double[3];
    try {
      for (int i = 0; i < 3; i++) {
        mm[i] = Typed.quantity("butt bore", parts[i], Unit.MILLIMETRE);
      }
      actions.boreButts(new ButtBore(mm[0], mm[1], mm[2]), reply("butt bore"));
    } catch (ComplaintException | IllegalArgumentException e) {
      complain(e.getMessage());
    }
  }

  private static String inWords(ButtBore bore) {
    return String.join(
        ", ",
        Figures.asTyped(bore.leftAtButtMm()),
        Figures.asTyped(bore.deepestMm()),
        Figures.asTyped(bore.diameterMm()));
  }

  private Reply reply(String name) {
    awaited++;
    return Reply.onEventThread(
        () -> {
          answered();
          complain("Kept: " + name + ".");
        },
        why -> {
          awaited--;
          complain(why); // what was typed stays, to be mended
        });
  }

  private void complain(String words) {
    complaint = words;
    footSays();
  }

  @Override
  public void opened() {
    complaint = "";
    actions.look();
    refresh.start();
    port.requestFocusInWindow();
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void show(SettingsView next) {
    if (awaited > 0) {
      return;
    }
    view = next;
    showing = true;
    port.setModel(new DefaultComboBoxModel<>(next.ports().toArray(String[]::new)));
    port.setSelectedItem(next.port().isEmpty() ? null : next.port());
    theme.setSelectedIndex(next.theme().ordinal());
    length.setSelectedItem(next.units().length().symbol());
    mass.setSelectedItem(next.units().mass().symbol());
    guess.setSelectedIndex(next.guessesFirst() ? 1 : 0);
    show(backup, next.backup(), false);
    workshop.setText(next.workshop());
    fill(false);
    showing = false;
    footSays();
  }

  /**
   * @param evenFocused also into the field that has the focus, over what is typed there
   */
  private void fill(boolean evenFocused) {
    show(sureness, Figures.asTyped(view.surenessPercent()), evenFocused);
    show(words, String.join(", ", view.words()), evenFocused);
    show(initials, view.initials(), evenFocused);
    show(bore, inWords(view.bore()), evenFocused);
  }

  private static void show(JTextField field, String text, boolean evenFocused) {
    if ((evenFocused || !field.isFocusOwner()) && !field.getText().equals(text)) {
      field.setText(text);
      field.setCaretPosition(0);
    }
  }

  private void footSays() {
    foot()
        .say(
            complaint.isEmpty() ? "Type and press Enter, or choose." : complaint,
            "Ctrl Z takes back what was set last.  The bench head's calibration is kept under"
                + " Checks.");
  }
}
