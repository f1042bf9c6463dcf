package sagwright.screen.checks;

import java.awt.LayoutManager;
import javax.swing.JPanel;
import sagwright.screen.Reply;

/** One of the cards of the checks page: what is due, or one thing that is being done about it. */
abstract class CheckCard extends JPanel {
  private static final long serialVersionUID = 1L;

  /** How a card speaks to its page. */
  interface Speech {
    /** Something cannot be done, or has been done: one line. */
    void say(String line);

    /** What was done here is done: back to what is due, with one line about it. */
    void done(String line);
  }

  private final String title;
  private final transient Speech speech;

  /**
   * @param title as the page's head has it
   */
  CheckCard(String name, String title, Speech speech, LayoutManager layout) {
    super(layout);
    this.title = title;
    this.speech = speech;
    setName(name);
  }

  final String title() {
    return title;
  }

  final void say(String line) {
    speech.say(line);
  }

  /** Something is not kept: says why. */
  void refused(String why) {
    say(why);
  }

  /** Goes back with a line once a thing is kept, or says why it is not. */
  final Reply doneSaying(String line) {
    return Reply.onEventThread(() -> speech.done(line), this::refused);
  }

  /** Stays here once a thing is done, or says why it is not. */
  final Reply then(Runnable run) {
    return Reply.onEventThread(run, this::refused);
  }

  /** Behind the title. */
  String details() {
    return "";
  }

  /** The foot's large line: safety, or what comes next. */
  abstract String foot();

  /** The foot's small line: keys. */
  abstract String keys();

  /** What the one control does, and its key. */
  abstract String control();

  String controlKey() {
    return "Ctrl Enter";
  }

  /** The control was pressed. */
  abstract void press();

  /** Ctrl Z. */
  abstract void takeBack();

  /** The card comes into view. */
  abstract void begin();

  /** Another card, or another page, takes its place. */
  void leave() {}

  abstract void show(ChecksView view);

  /** Four times a second while the card is in view. */
  void live(ChecksActions.Live live) {}
}
