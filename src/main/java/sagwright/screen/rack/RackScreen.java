package sagwright.screen.rack;

import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Reply;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.UnderlinedField;

/**
 * The rack. What is typed filters the list, Enter opens a record, Ctrl N writes a new blank down;
 * on a record Enter lays the blank on the bench and M measures it anew; Esc goes back.
 */
public final class RackScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final KeyStroke KEEP =
      KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK);

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
  private transient RackView view;
  private Side side = Side.LIST;
  private String awaited = "";
  private boolean isNew;
  private String complaint = "";

  public RackScreen(Mailbox<RackView> mailbox, RackActions actions) {
    super("Rack");
    this.actions = actions;
    this.view = mailbox.newest();
    this.list = new RackList(view.units().mass(), row -> openRecord(row.tag()));
    this.record = new RecordPanel(() -> turnTo(Side.LIST), this::measure);
    this.form = new BlankForm(view.units(), this::keep);
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
    words();
  }

  @Override
  public void opened() {
    refresh.start();
    focus();
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
    key(KeyStroke.getKeyStroke(KeyEvent.VK_N, InputEvent.CTRL_DOWN_MASK), this::writeNew);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::back);
    key(KEEP, this::keep);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), this::enter);
    letter('m', this::measure);
  }

  private void show(RackView next) {
    view = next;
    list.show(next.blanks());
    list.filter(filter.getText());
    if (next.open() != null) {
      record.show(next.open());
      if (next.open().tag().equals(awaited)) {
        awaited = "";
        turnTo(Side.RECORD);
      }
    }
    words();
  }

  private void words() {
    boolean inList = side == Side.LIST;
    filter.setVisible(inList);
    switch (side) {
      case LIST -> {
        title.setText("Rack");
        details.setText(list.shown() + " of " + view.blanks().size());
        foot()
            .say(
                "Enter opens a record.  Ctrl N writes a blank down.",
                "A measurement is never changed: a newer one follows it.");
        control().say("New blank", "Ctrl N");
      }
      case RECORD -> {
        title.setText(view.open().tag());
        details.setText(view.open().details());
        foot()
            .say("Enter lays it on the bench.  M measures it anew.", "Esc goes back to the rack.");
        control().say("Lay on bench", "Enter");
      }
      case FORM -> {
        title.setText(isNew ? "New blank" : view.open().tag());
        details.setText(isNew ? "" : "measured anew; what was measured before stays");
        foot()
            .say(
                complaint.isEmpty() ? "Enter goes on.  Ctrl Enter keeps it." : complaint,
                "Other units may be typed: 58 in, 18½ oz, 147.3 cm.");
        control().say("Keep", "Ctrl Enter");
      }
      default -> throw new IllegalStateException(side.name());
    }
  }

  private void press() {
    switch (side) {
      case LIST -> writeNew();
      case RECORD -> actions.lay(view.open().tag());
      case FORM -> keep();
      default -> throw new IllegalStateException(side.name());
    }
  }

  private void enter() {
    if (side == Side.RECORD) {
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
    if (side == Side.RECORD) {
      isNew = false;
      turnTo(Side.FORM);
      form.begin(view, view.open().entry());
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
    Reply reply = Reply.onEventThread(() -> openRecord(entry.tag()), this::complain);
    if (isNew) {
      actions.enter(entry, reply);
    } else {
      actions.measure(entry, reply);
    }
  }

  private void complain(String words) {
    complaint = words;
    words();
  }

  private void back() {
    if (side == Side.LIST) {
      filter.setText("");
    } else {
      turnTo(side == Side.FORM && !isNew ? Side.RECORD : Side.LIST);
    }
  }

  private void turnTo(Side to) {
    side = to;
    complaint = "";
    cards.show(sides, to.name());
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
