package sagwright.screen.choose;

import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import sagwright.screen.AskStrip;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;

/**
 * Chooses a blank for an order. Up and Down go through the blanks, Page Up and Page Down through
 * the open orders, O to the order's number; 1 to 9 and Space pick, C looks at the picks closely, A
 * at all orders at once, W says what ranks; Esc lets go or goes back, Enter promises the first
 * pick, U takes the promise back, Ctrl Z the last action.
 */
public final class ChooseScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final int NUMBERED = 9;
  private static final int MANY = 10;

  /** What the page shows. */
  private enum Side {
    BLANKS,
    CLOSELY,
    ALL_ORDERS
  }

  private final transient ChooseActions actions;
  private final transient Refresh<ChooseView> refresh;
  private final CardLayout cards = new CardLayout();
  private final JPanel sides = new JPanel(cards);
  private final RowsPicture rows = new RowsPicture(this::clicked, this::move);
  private final ChooseHead head;
  private final ChooseBody body;
  private final CloselyPanel closely;
  private final AllOrdersPanel allOrders;
  private transient ChooseView view;
  private transient Picks picks = Picks.NONE;
  private transient List<String> lookedAt = List.of();
  private Side side = Side.BLANKS;
  private boolean isAsking;
  private String complaint = "";
  private int focus;

  public ChooseScreen(Mailbox<ChooseView> mailbox, ChooseActions actions) {
    super("Choose");
    this.actions = actions;
    this.view = mailbox.newest();
    this.head = new ChooseHead(actions, this::toWork);
    this.body =
        new ChooseBody(
            rows,
            actions,
            new ChooseBody.BodyKeys(this::back, this::lookClosely, this::showAll, this::weigh));
    this.closely = new CloselyPanel(this::back);
    this.allOrders = new AllOrdersPanel(this::back, line -> openMarked());
    sides.add(body, Side.BLANKS.name());
    sides.add(closely, Side.CLOSELY.name());
    sides.add(allOrders, Side.ALL_ORDERS.name());
    fill(head, sides);
    keys();
    control().setFocusable(false);
    control().addActionListener(e -> promise());
    this.refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
  }

  @Override
  public void opened() {
    refresh.start();
    actions.refresh();
    turnTo(Side.BLANKS);
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void toWork() {
    if (side == Side.ALL_ORDERS) {
      allOrders.focusTable();
    } else if (side == Side.CLOSELY) {
      closely.focusPicture();
    } else {
      rows.requestFocusInWindow();
    }
  }

  private void turnTo(Side to) {
    side = to;
    complaint = "";
    cards.show(sides, to.name());
    showPicks();
    toWork();
  }

  private void show(ChooseView next) {
    boolean isAnother = !Objects.equals(numberOf(next), numberOf(view));
    view = next;
    if (isAnother) {
      picks = Picks.NONE;
      focus = 0;
    }
    focus = Math.max(0, Math.min(focus, next.rowCount() - 1));
    head.show(next, isAnother);
    allOrders.show(next);
    showPicks();
  }

  private static String numberOf(ChooseView view) {
    return view.order() == null ? null : view.order().number();
  }

  private List<String> picked() {
    return picks.among(view.serving());
  }

  /** Shows who is picked; what has not been looked at closely yet is asked for. */
  private void showPicks() {
    List<String> picked = picked();
    body.show(view, picked, focus);
    closely.show(view, picked);
    words(picked);
    boolean isMissing = picked.stream().anyMatch(tag -> view.closely(tag).isEmpty());
    if (!picked.equals(lookedAt) || isMissing) {
      lookedAt = picked;
      if (!picked.isEmpty()) {
        actions.lookAt(picked);
      }
    }
  }

  private void words(List<String> picked) {
    ChooseFoot says =
        side == Side.ALL_ORDERS
            ? ChooseFoot.ofAllOrders(view, allOrders.marked())
            : ChooseFoot.ofPicks(view, picked);
    control().say(says.control(), "Enter");
    control().setEnabled(says.canPromise() && !isAsking);
    if (complaint.isEmpty()) {
      foot().say(says.first(), says.second());
    } else {
      foot().say(complaint, says.first());
    }
  }

  private void keys() {
    key(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, 0), () -> actions.step(1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, 0), () -> actions.step(-1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), () -> move(1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_UP, 0), () -> move(-1));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, InputEvent.CTRL_DOWN_MASK), () -> move(MANY));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_UP, InputEvent.CTRL_DOWN_MASK), () -> move(-MANY));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_HOME, 0), () -> move(-view.rowCount()));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_END, 0), () -> move(view.rowCount()));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), this::promise);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::back);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), actions::undo);
    key(KeyStroke.getKeyStroke(' '), () -> pick(focus));
    for (int i = 0; i < NUMBERED; i++) {
      int place = i;
      key(KeyStroke.getKeyStroke((char) ('1' + i)), () -> pick(place));
    }
    letter('u', actions::takeBack);
    letter('o', head::focusOrder);
    letter('c', this::lookClosely);
    letter('a', this::showAll);
    letter('w', this::weigh);
  }

  private void move(int by) {
    if (side == Side.ALL_ORDERS) {
      allOrders.move(by);
    } else {
      focus = Math.max(0, Math.min(focus + by, view.rowCount() - 1));
    }
    showPicks();
  }

  private void clicked(int row) {
    focus = row;
    pick(row);
  }

  private void pick(int row) {
    if (side == Side.ALL_ORDERS || isAsking) {
      return;
    }
    if (row < view.serving().size()) {
      focus = row;
      picks = picks.toggled(view.serving().get(row).tag());
    }
    showPicks();
  }

  private void lookClosely() {
    if (!isAsking && !picked().isEmpty()) {
      turnTo(side == Side.CLOSELY ? Side.BLANKS : Side.CLOSELY);
    }
  }

  private void showAll() {
    if (!isAsking) {
      actions.allOrders();
      turnTo(Side.ALL_ORDERS);
    }
  }

  /** The order of the marked line, to choose among its blanks. */
  private void openMarked() {
    if (allOrders.marked() != null) {
      actions.open(allOrders.marked().order());
      turnTo(Side.BLANKS);
    }
  }

  private void weigh() {
    if (isAsking || side == Side.ALL_ORDERS) {
      return;
    }
    isAsking = true;
    AskStrip strip =
        WeightsStrip.of(
            view.weights(),
            weights -> {
              askedEnough();
              actions.weigh(weights);
            },
            line -> {
              askedEnough();
              complaint = line;
              showPicks();
            },
            this::askedEnough);
    ask(strip);
    showPicks();
    strip.focusFirst();
  }

  private void askedEnough() {
    isAsking = false;
    complaint = "";
    ask(null);
    showPicks();
    toWork();
  }

  private void back() {
    if (side == Side.BLANKS) {
      picks = Picks.NONE;
    }
    turnTo(Side.BLANKS);
  }

  private void promise() {
    if (side == Side.ALL_ORDERS) {
      openMarked();
      return;
    }
    List<String> picked = picked();
    if (!isAsking && control().isEnabled() && !picked.isEmpty()) {
      actions.promise(picked.get(0), view.order().number());
    }
  }
}
