package sagwright.screen.start;

import java.awt.event.KeyEvent;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.Page;
import sagwright.screen.Reply;
import sagwright.screen.theme.Text;

/**
 * The first page: a workshop's file, or practice. Enter opens the file, F5 practises, F6 opens the
 * example.
 */
public final class StartScreen extends Page {
  private static final long serialVersionUID = 1L;

  private final transient StartActions actions;
  private final JTextField file = new JTextField(40);
  private final JButton practise = new JButton("Practise, F5");
  private final JButton example = new JButton("Look around, F6");

  /**
   * @param usual the workshop that is offered
   */
  public StartScreen(Path usual, StartActions actions) {
    super("Start");
    this.actions = actions;
    JPanel head =
        head(
            "[]14[grow]",
            Text.title("Sagwright"),
            Text.second("a bend bench for billiards cue shafts"));
    JPanel body = new JPanel(new MigLayout("insets 60 0 0 0", "[640:pref]"));
    body.add(Text.heading("Your workshop"), "wrap 4");
    body.add(
        Text.second(
            "One file holds every blank, run, order and grade. It is made where there is none."),
        "wrap 8");
    body.add(file, "growx, hmin 44, wrap 44");
    body.add(Text.heading("Practice"), "wrap 4");
    body.add(
        Text.second(
            "No hardware: a bench inside the program, with blanks of its own, apart from yours."),
        "wrap 4");
    practise.setName("start.practise");
    body.add(practise, "growx 0, hmin 52, wrap 44");
    body.add(Text.heading("An example"), "wrap 4");
    body.add(
        Text.second(
            "An invented workshop in full swing, to look around in and try everything. Nothing in"
                + " it is real;"),
        "wrap 0");
    body.add(
        Text.second(
            "it lies in a file of its own, with the practice bench. It is made in some seconds."),
        "wrap 4");
    example.setName("start.example");
    body.add(example, "growx 0, hmin 52");
    file.setName("start.file");
    file.setText(usual.toString());
    file.putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, "workshop file");
    file.addActionListener(e -> openWorkshop());
    practise.addActionListener(e -> practise());
    example.addActionListener(e -> openExample());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_F5, 0), this::practise);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_F6, 0), this::openExample);
    control().say("Open", "Enter");
    control().addActionListener(e -> openWorkshop());
    say("");
    fill(head, body);
  }

  private void openWorkshop() {
    try {
      actions.openWorkshop(Path.of(file.getText().trim()), reply());
    } catch (InvalidPathException e) {
      say(e.getMessage());
    }
  }

  private void practise() {
    actions.practise(reply());
  }

  private void openExample() {
    actions.openExample(words -> SwingUtilities.invokeLater(() -> say(words)), reply());
  }

  private Reply reply() {
    return Reply.onEventThread(() -> say(""), this::say);
  }

  private void say(String complaint) {
    foot()
        .say(
            complaint.isEmpty()
                ? "Enter opens the workshop.  F5 practises.  F6 opens the example."
                : complaint,
            "Keep the file on a disk of this machine: on a network drive it may be lost.");
  }

  @Override
  public void opened() {
    file.requestFocusInWindow();
  }
}
