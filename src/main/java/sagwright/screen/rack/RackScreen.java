package sagwright.screen.rack;

import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import sagwright.screen.AskStrip;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Reply;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.UnderlinedField;

/**
 * The rack. What is typed filters the list, the arrows and Page Down move in it and in a record,
 * Enter opens a record, Ctrl N writes a new blank down, Ctrl S and Ctrl R sort; on a record Enter
 * lays the blank on the bench, M measures it anew, W weighs it, P says how it is spliced, A adds a
 * note, E ends it; Esc goes back, Ctrl Z takes the last action back.
 */
public final class RackScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final KeyStroke KEEP =
      KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK);

  /** So many rows, or events of a record, does Page Down go on. */
  private static final int PAGE = 6;

  /** What the page shows. */
  private enum Side {
    LIST,
    RECORD,
    FORM
  }

  private final transient RackActions actions;
  private final transient Refresh<RackView> refresh;
  private final CardLayout cards = new CardLayout();
  private final JPanel sides = new JPanel(cards);
  private final UnderlinedField filter = new UnderlinedField("rack.filter", "type to filter");
  private final JLabel title = Text.title("");
  private final JLabel details = Text.second("");
  private final RackList list;
  private final RecordPanel record;
  private final BlankForm form;
  private final transient RecordQuestions questions;
  private transient RackView view;
  private Side side = Side.LIST;
  private String awaited = "";
  private boolean isNew;
  private String complaint = "";

  public RackScreen(Mailbox<RackView> mailbox, RackActions actions) {
    super("Rack");
    this.actions = actions;
    this.view = mailbox.newest();
    this.list = new RackList(view.units(), row -> openRecord(row.tag()));
    this.record =
        new RecordPanel(
            new RecordPanel.RecordKeys(
                this::back, this::measure, this::weigh, this::splice, this::note, this::end));
    this.questions = new RecordQuestions(actions, new BelowTheRecord());
    this.form = new BlankForm(view.units(), this::keep, this::formTyped);
    sides.add(list, Side.LIST.name());
    sides.add(record, Side.RECORD.name());
    sides.add(form, Side.FORM.name());
    filter.setFont(Theme.style().lettering().semiBold(20));
    JPanel head = head("[]14[grow][]", title, details, filter);
    fill(head, sides);
    control().addActionListener(e -> press());
    keys();
    this.refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
    list.whenMarked(this::words);
    words();
  }

  @Override
  public void opened() {
    refresh.start();
    focus();
  }

  @Override
  public boolean holdsTyping() {
    return side == Side.FORM;
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void keys() {
    filter.getDocument().addDocumentListener(new OnTyping(this::typed));
    filter.addActionListener(e -> openSelected());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_UP, 0), () -> move(-1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), () -> move(1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, 0), () -> move(-PAGE));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, 0), () -> move(PAGE));
    sortKey(KeyEvent.VK_S, 0, () -> list.sortByNext(1));
    sortKey(KeyEvent.VK_S, InputEvent.SHIFT_DOWN_MASK, () -> list.sortByNext(-1));
    sortKey(KeyEvent.VK_R, 0, list::sortTheOtherWay);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_N, InputEvent.CTRL_DOWN_MASK), this::writeNew);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), this::undo);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::back);
    key(KEEP, this::keep);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), this::enter);
    letter('m', this::measure);
    letter('w', this::weigh);
    letter('p', this::splice);
    letter('a', this::note);
    letter('e', this::end);
  }

  private void sortKey(int keyCode, int besideCtrl, Runnable sort) {
    key(
        KeyStroke.getKeyStroke(keyCode, InputEvent.CTRL_DOWN_MASK | besideCtrl),
        () -> {
          if (side == Side.LIST) {
            sort.run();
          }
        });
  }

  private void show(RackView next) {
    view = next;
    list.show(next.blanks());
    if (next.open() != null) {
      record.show(next.open());
      if (next.open().tag().equals(awaited)) {
        awaited = "";
        turnTo(Side.RECORD);
      }
    } else if (side == Side.RECORD) {
      turnTo(Side.LIST);
    }
    words();
  }

  private void words() {
    boolean inList = side == Side.LIST;
    control().setEnabled(!questions.isOpen());
    filter.setVisible(inList);
    switch (side) {
      case LIST -> {
        title.setText("Rack");
        details.setText(list.count(view.blanks()));
        say(listSays(), RackWords.LIST_MORE);
        control().say("New blank", "Ctrl N");
      }
      case RECORD -> {
        title.setText(view.open().tag());
        details.setText(view.open().details());
        if (view.open().isEnded()) {
          say(RackWords.ended("It", view.open().endedWhy()), RackWords.ENDED_MORE);
          control().say("To the rack", "Esc");
        } else {
          say(RackWords.RECORD, RackWords.RECORD_MORE);
          control().say("Lay on bench", "Enter");
        }
      }
      case FORM -> {
        title.setText(isNew ? "New blank" : view.open().tag());
        details.setText(isNew ? "" : "measured anew; what was measured before stays");
        say(form.hint().todo(), form.hint().more());
        control().say("Keep", "Ctrl Enter");
      }
      default -> throw new IllegalStateException(side.name());
    }
  }

  /** Of what is no more, why: the list may have no room for it. */
  private String listSays() {
    RackView.Row marked = list.selected();
    return marked != null && marked.isEnded()
        ? RackWords.ended(marked.tag(), marked.endedWhy())
        : RackWords.LIST;
  }

  /** What was complained of, or has been done, goes before what can be done. */
  private void say(String todo, String more) {
    String first = complaint.isEmpty() ? view.said() : complaint;
    boolean isPlain = first.isEmpty() || side == Side.FORM && complaint.isEmpty();
    foot().say(isPlain ? todo : first, isPlain ? more : todo);
  }

  private void press() {
    switch (side) {
      case LIST -> writeNew();
      case RECORD -> layOrLeave();
      case FORM -> keep();
      default -> throw new IllegalStateException(side.name());
    }
  }

  private void enter() {
    if (isAtRecord()) {
      layOrLeave();
    }
  }

  private void layOrLeave() {
    if (view.open().isEnded()) {
      back();
    } else {
      actions.lay(view.open().tag());
    }
  }

  private void openSelected() {
    if (list.selected() != null) {
      openRecord(list.selected().tag());
    }
  }

  private void openRecord(String tag) {
    awaited = tag;
    actions.open(tag);
    if (view.open() != null && view.open().tag().equals(tag)) {
      awaited = "";
      turnTo(Side.RECORD);
    }
  }

  private void move(int by) {
    if (side == Side.LIST) {
      list.move(by);
    } else if (side == Side.RECORD) {
      record.move(by);
    }
  }

  private void writeNew() {
    if (side != Side.FORM) {
      isNew = true;
      turnTo(Side.FORM);
      form.begin(view);
    }
  }

  private void measure() {
    if (isAtBlank()) {
      isNew = false;
      turnTo(Side.FORM);
      form.begin(view, view.open().entry());
    }
  }

  private boolean isAtRecord() {
    return side == Side.RECORD && !questions.isOpen();
  }

  /** The same where the blank is still there to be worked on. */
  private boolean isAtBlank() {
    return isAtRecord() && !view.open().isEnded();
  }

  private void weigh() {
    if (isAtBlank()) {
      questions.weigh(view.open().entry(), view.units());
    }
  }

  private void splice() {
    if (isAtBlank()) {
      questions.splice(view.open().tag(), view.units());
    }
  }

  private void note() {
    if (isAtRecord()) {
      questions.note(view.open().tag());
    }
  }

  private void end() {
    if (isAtBlank()) {
      questions.end(view.open().tag());
    }
  }

  /** Where a question stands while it is open: below the record, which waits. */
  private final class BelowTheRecord implements RecordQuestions.AskingPage {
    @Override
    public void show(AskStrip question) {
      ask(question);
      words();
    }

    @Override
    public void goOn() {
      complaint = "";
      words();
      focus();
    }

    @Override
    public void complain(String words) {
      RackScreen.this.complain(words);
    }
  }

  private void keep() {
    if (side != Side.FORM) {
      return;
    }
    BlankEntry entry = form.read(this::complain);
    if (entry == null) {
      return;
    }
    Reply reply =
        Reply.onEventThread(() -> openRecord(entry.tag()), why -> complain(form.refused(why)));
    if (isNew) {
      actions.enter(entry, reply);
    } else {
      actions.measure(entry, reply);
    }
  }

  private void undo() {
    if (side != Side.FORM && !questions.isOpen()) {
      actions.undo(Reply.onEventThread(() -> {}, this::complain));
    }
  }

  private void complain(String words) {
    complaint = words;
    if (questions.isOpen()) {
      questions.close();
      focus();
    }
    words();
  }

  /** What was complained of may be mended now. */
  private void formTyped() {
    if (side == Side.FORM) {
      complaint = "";
      words();
    }
  }

  private void back() {
    if (side == Side.LIST) {
      filter.setText("");
    } else if (!questions.isOpen()) {
      turnTo(side == Side.FORM && !isNew ? Side.RECORD : Side.LIST);
    }
  }

  private void turnTo(Side to) {
    side = to;
    complaint = "";
    cards.show(sides, to.name());
    if (to == Side.RECORD) {
      list.select(view.open().tag());
    }
    words();
    focus();
  }

  private void focus() {
    if (side == Side.LIST) {
      filter.requestFocusInWindow();
    } else if (side == Side.RECORD) {
      control().requestFocusInWindow();
    }
  }

  private void typed() {
    list.filter(filter.getText());
    filter.getParent().revalidate();
    words();
  }
}
