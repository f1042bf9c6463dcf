package sagwright.screen.choose;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Objects;
import javax.swing.KeyStroke;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.choose.ChooseView.Cost;
import sagwright.screen.choose.ChooseView.Row;

/**
 * Chooses a blank for an order. Up and Down go through the blanks, Page Up and Page Down through
 * the open orders, O to the order's number; 1 to 9 and Space pick, Esc lets go, Enter promises the
 * first pick, U or Ctrl Z takes the promise back.
 */
public final class ChooseScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final int NUMBERED = 9;
  private static final int MANY = 10;

  /** A longer tag has no room on the control; the foot says it. */
  private static final int LONGEST_ON_CONTROL = 7;

  private final transient ChooseActions actions;
  private final transient Refresh<ChooseView> refresh;
  private final RowsPicture rows = new RowsPicture(this::clicked, this::move);
  private final ChooseHead head;
  private final ChooseBody body;
  private transient ChooseView view;
  private transient Picks picks = Picks.NONE;
  private transient List<String> lookedAt = List.of();
  private int focus;

  public ChooseScreen(Mailbox<ChooseView> mailbox, ChooseActions actions) {
    super("Choose");
    this.actions = actions;
    this.view = mailbox.newest();
    this.head = new ChooseHead(actions, this::toWork);
    this.body = new ChooseBody(rows, actions, this::letGo);
    fill(head, body);
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
    toWork();
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void toWork() {
    rows.requestFocusInWindow();
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
    boolean isPromised = view.order() != null && view.order().promisedTag() != null;
    if (picked.isEmpty()) {
      control().say("Promise", "Enter");
      control().setEnabled(false);
      String next = view.rowCount() == 0 ? "" : ChooseWords.nextStep(view);
      foot().say(view.said().isEmpty() ? next : view.said(), "");
      return;
    }
    Row lead = view.servingRow(picked.get(0)).orElseThrow();
    control().say((isPromised ? "Promised" : "Promise") + shownTag(lead), "Enter");
    control().setEnabled(!isPromised);
    String why = ChooseWords.why(view, lead);
    if (view.said().isEmpty()) {
      foot().say(why, second(lead, isPromised));
    } else {
      foot().say(view.said(), why);
    }
  }

  private String second(Row lead, boolean isPromised) {
    if (isPromised) {
      return "U takes the promise back.  Page Down: the next open order.";
    }
    Cost cost = view.cost();
    boolean isThis = cost != null && cost.tag().equals(lead.tag());
    return ChooseWords.cost(isThis ? cost : null) + "  A promise can be taken back.";
  }

  private String shownTag(Row lead) {
    boolean isPromised = view.order().promisedTag() != null;
    String tag = isPromised ? view.order().promisedTag() : lead.tag();
    return tag.length() <= LONGEST_ON_CONTROL ? " " + tag : "";
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
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::letGo);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), actions::takeBack);
    key(KeyStroke.getKeyStroke(' '), () -> pick(focus));
    for (int i = 0; i < NUMBERED; i++) {
      int place = i;
      key(KeyStroke.getKeyStroke((char) ('1' + i)), () -> pick(place));
    }
    letter('u', actions::takeBack);
    letter('o', head::focusOrder);
  }

  private void move(int by) {
    focus = Math.max(0, Math.min(focus + by, view.rowCount() - 1));
    showPicks();
  }

  private void clicked(int row) {
    focus = row;
    pick(row);
  }

  private void pick(int row) {
    if (row < view.serving().size()) {
      focus = row;
      picks = picks.toggled(view.serving().get(row).tag());
    }
    showPicks();
  }

  private void letGo() {
    picks = Picks.NONE;
    toWork();
    showPicks();
  }

  private void promise() {
    List<String> picked = picked();
    if (control().isEnabled() && !picked.isEmpty()) {
      actions.promise(picked.get(0), view.order().number());
    }
  }
}
