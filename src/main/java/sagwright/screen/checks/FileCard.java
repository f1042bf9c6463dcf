package sagwright.screen.checks;

import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.theme.Text;

/** A calibration that lies in a file already. */
final class FileCard extends CheckCard {
  private static final long serialVersionUID = 1L;

  private final transient ChecksActions actions;
  private final JTextField file = new JTextField(40);

  FileCard(ChecksActions actions, Speech speech) {
    super(
        "file",
        "Bring a calibration in",
        speech,
        new MigLayout("insets 40 0 0 0, gap 0 10", "[64%,fill]"));
    this.actions = actions;
    add(Text.label("The file of a calibration", 20, true), "wrap");
    add(Text.plain("As the command calibrate writes it, with load and gauge in it."), "wrap");
    file.setName("file.path");
    file.addActionListener(e -> press());
    add(file, "growx, hmin 44");
  }

  @Override
  String foot() {
    return "It counts from now on; the one before stays on the record.";
  }

  @Override
  String keys() {
    return "Enter brings it in.  Esc goes back.";
  }

  @Override
  String control() {
    return "Bring in";
  }

  @Override
  String controlKey() {
    return "Enter";
  }

  @Override
  void press() {
    actions.bringIn(
        file.getText().trim(), doneSaying("The calibration is in force.  Ctrl Z takes it back."));
  }

  @Override
  void takeBack() {
    say("nothing is brought in yet");
  }

  @Override
  void begin() {
    file.requestFocusInWindow();
    file.selectAll();
  }

  @Override
  void show(ChecksView view) {}
}
