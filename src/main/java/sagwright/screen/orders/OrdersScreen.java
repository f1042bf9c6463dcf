package sagwright.screen.orders;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.grade.Order;
import sagwright.screen.Mailbox;
import sagwright.screen.Page;
import sagwright.screen.Refresh;
import sagwright.screen.Reply;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.Text;

/**
 * The orders. N (or Ctrl N, as everywhere) takes a new one, Enter opens one to be changed, Esc goes
 * back. In the form Page Down turns the leaf; F6, F7, F8 ask at the front, the middle, the butt.
 */
public final class OrdersScreen extends Page {
  private static final long serialVersionUID = 1L;
  private static final String LIST = "list";
  private static final String FORM = "form";
  private static final String EMPTY = "empty";

  private final transient OrdersActions actions;
  private final transient Refresh<OrdersView> refresh;
  private final CardLayout cards = new CardLayout();
  private final JPanel sides = new JPanel(cards);
  private final JLabel title = Text.title("Orders");
  private final JLabel details = Text.second("");
  private final QuietButton turning =
      new QuietButton("order.turn", "next leaf", "Page Down", () -> turn(1));
  private final RowTable<OrdersView.Row> table;
  private final OrderForm form;
  private final FinishPanel finish;
  private transient OrdersView view;
  private boolean inForm;
  private String complaint = "";

  public OrdersScreen(Mailbox<OrdersView> mailbox, OrdersActions actions) {
    super("Orders");
    this.actions = actions;
    this.view = mailbox.newest();
    this.finish = new FinishPanel(actions, view.units(), weights -> form().takeWeights(weights));
    this.form = new OrderForm(view, actions, this::typed, this::complain);
    this.table = new RowTable<>("orders.table", OrderColumns.all());
    table.whenOpened(row -> change(row.order()));
    JPanel empty = new JPanel(new MigLayout("insets 80 0 0 0"));
    empty.add(Text.heading("No order yet"), "wrap 10");
    empty.add(Text.plain("N takes the first one: length, tip, butt and what is asked."));
    sides.add(Lists.scrolled(table), LIST);
    sides.add(empty, EMPTY);
    sides.add(withPlan(form, finish), FORM);
    JPanel head = head("[]14[grow][]", title, details, turning);
    JPanel body = new JPanel(new BorderLayout());
    body.add(sides, BorderLayout.CENTER);
    fill(head, body);
    control().addActionListener(e -> press());
    key(KeyStroke.getKeyStroke(KeyEvent.VK_N, InputEvent.CTRL_DOWN_MASK), this::takeNew);
    letter('n', this::takeNew);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK), this::keep);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), this::toList);
    planKey(KeyEvent.VK_B, finish::nextBlank);
    planKey(KeyEvent.VK_L, finish::takeLead);
    key(KeyStroke.getKeyStroke(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK), this::takeBack);
    for (int i = 0; i < 3; i++) {
      int place = i;
      formKey(KeyStroke.getKeyStroke(KeyEvent.VK_F6 + i, 0), () -> form.toStiffness(place));
    }
    formKey(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, 0), () -> turn(1));
    formKey(KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, 0), () -> turn(-1));
    this.refresh = new Refresh<>(mailbox, this::show);
    refresh.now();
    words();
  }

  private OrderForm form() {
    return form;
  }

  private void planKey(int keyCode, Runnable run) {
    formKey(KeyStroke.getKeyStroke(keyCode, InputEvent.CTRL_DOWN_MASK), run);
  }

  private void formKey(KeyStroke stroke, Runnable run) {
    key(
        stroke,
        () -> {
          if (inForm) {
            run.run();
          }
        });
  }

  /** In the form what was taken from a plan or done to a taper, else the workshop's last action. */
  private void takeBack() {
    if (!inForm) {
      actions.undo(this::complain);
    } else if (!form.undoTaper()) {
      finish.takeBack();
    }
  }

  private void turn(int by) {
    form.turn(by);
    words();
  }

  /** The form, and under it what comes of it. */
  private static JPanel withPlan(OrderForm form, FinishPanel finish) {
    JPanel both =
        new JPanel(new MigLayout("insets 0, gap 0 4, wrap", "[grow,fill]", "[][grow,fill]"));
    both.add(form, "wmin 0, hmin 0");
    both.add(finish, "hmin pref, grow");
    return both;
  }

  @Override
  public void opened() {
    if (!inForm) {
      complain("");
    }
    refresh.start();
    focus();
  }

  @Override
  public boolean holdsTyping() {
    return inForm;
  }

  @Override
  public void left() {
    refresh.stop();
  }

  private void show(OrdersView next) {
    boolean isFirst = view.orders().isEmpty() && !next.orders().isEmpty();
    view = next;
    table.show(next.orders(), row -> row.order().number());
    if (inForm) {
      form.refresh(next);
    } else {
      cards.show(sides, next.orders().isEmpty() ? EMPTY : LIST);
      if (isFirst && isShowing()) {
        focus();
      }
    }
    words();
  }

  private void words() {
    turning.setVisible(inForm);
    if (inForm) {
      title.setText(form.isNew() ? "New order" : "Change an order");
      details.setText(form.leaves().name());
      foot()
          .say(
              complaint.isEmpty() ? "Enter goes on.  Ctrl Enter keeps it." : complaint,
              form.leaves().hint());
      control().say("Keep", "Ctrl Enter");
    } else {
      title.setText("Orders");
      long open = view.orders().stream().filter(row -> row.blank().isEmpty()).count();
      details.setText(open + " of " + view.orders().size() + " without a blank");
      foot()
          .say(
              complaint.isEmpty() ? "Enter opens an order.  N takes a new one." : complaint,
              "An order that is changed keeps its older versions.  Ctrl Z takes the last action"
                  + " back.");
      control().say("New order", "N");
    }
  }

  private void press() {
    if (inForm) {
      keep();
    } else {
      takeNew();
    }
  }

  private void takeNew() {
    if (!inForm) {
      toForm();
      finish.begin(view.words());
      form.begin(view);
      words();
    }
  }

  private void change(Order order) {
    toForm();
    finish.begin(view.words());
    form.begin(view, order);
    words();
  }

  private void keep() {
    Order order = inForm ? form.read(this::complain) : null;
    if (order == null) {
      return;
    }
    Reply reply =
        Reply.onEventThread(() -> kept(order.number()), why -> complain(form.complained(why)));
    if (form.isNew()) {
      actions.take(order, reply);
    } else {
      actions.change(order, reply);
    }
  }

  private void kept(String number) {
    refresh.now();
    table.select(row -> row.order().number().equals(number));
    toList();
  }

  /** What was complained of may be mended now. */
  private void typed(OrderDraft draft) {
    finish.show(draft);
    if (inForm && !complaint.isEmpty()) {
      complain("");
    }
  }

  private void complain(String words) {
    complaint = words;
    words();
  }

  private void toForm() {
    inForm = true;
    complaint = "";
    cards.show(sides, FORM);
  }

  private void toList() {
    inForm = false;
    complaint = "";
    cards.show(sides, view.orders().isEmpty() ? EMPTY : LIST);
    words();
    focus();
  }

  private void focus() {
    if (!inForm && !view.orders().isEmpty()) {
      table.requestFocusInWindow();
    } else if (!inForm) {
      control().requestFocusInWindow();
    }
  }
}
