package sagwright.screen.bench;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.grade.Ask;
import sagwright.quantity.Figures;
import sagwright.screen.Reply;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.UnderlinedField;

/** The head of the bench page: which blank lies there, which order it is tried for. */
final class BenchHead extends JPanel {
  private static final long serialVersionUID = 1L;

  private final UnderlinedField tag = new UnderlinedField("bench.tag", "type or scan a tag");
  private final UnderlinedField order = new UnderlinedField("bench.order", "order");
  private final transient Runnable toWork;
  private String awaited = "";
  private final JLabel details = Text.second("");
  private final JLabel asks = Text.second("");

  /**
   * @param test what Space does, also while a tag is typed: no tag has a space in it
   * @param toPage takes the focus while what was asked for is being laid: keys are the page's
   * @param toWork takes the focus once it is laid
   */
  BenchHead(BenchActions actions, Runnable test, Runnable toPage, Runnable toWork) {
    super(
        new MigLayout(
            "insets 0 0 4 0, aligny bottom, fillx", "[]6[]14[grow,shrink]20[]6[]10[]", "[]"));
    this.toWork = toWork;
    setName("bench.head");
    order.setFont(Theme.style().lettering().semiBold(20));
    order.setHorizontalAlignment(JTextField.TRAILING);
    asks.setFont(Theme.style().lettering().regular(20));
    add(tag, "aligny baseline");
    add(Text.key("B"), "aligny baseline");
    add(details, "aligny baseline, wmin 0");
    add(Text.key("O"), "aligny baseline");
    add(order, "aligny baseline");
    add(asks, "aligny baseline");
    tag.addActionListener(
        e -> {
          awaited = tag.getText().trim();
          toPage.run();
          actions.lay(awaited, Reply.onEventThread(() -> {}, why -> focusTag()));
        });
    tag.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            awaited = "";
          }
        });
    order.addActionListener(
        e -> {
          actions.tryFor(order.getText().trim());
          toWork.run();
        });
    for (JTextField field : new JTextField[] {tag, order}) {
      field.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0), "test");
      field.getInputMap().put(KeyStroke.getKeyStroke(' '), "test.typed");
      field.getActionMap().put("test", action(test));
      field.getActionMap().put("test.typed", action(() -> {}));
    }
  }

  void show(BenchView view) {
    boolean laid = view.shaft() != null;
    if (laid && view.shaft().tag().equalsIgnoreCase(awaited)) {
      awaited = "";
      if (!isOrdering()) {
        toWork.run();
      }
    }
    if (!tag.isFocusOwner() && awaited.isEmpty()) {
      set(tag, laid ? view.shaft().tag() : "");
    }
    details.setText(laid ? view.shaft().details() : "");
    boolean tried = view.order() != null;
    if (!order.isFocusOwner()) {
      set(order, tried ? view.order().number() : "");
    }
    asks.setText(tried ? inWords(view.order().ask()) : "");
  }

  private static String inWords(Ask ask) {
    return "asks "
        + Figures.asAsked(ask.stiffnessNPerMm())
        + " N/mm ± "
        + Figures.asTyped(ask.tolerancePercent())
        + " %";
  }

  /** Whether an order is being typed: the hand went on before the blank was laid. */
  boolean isOrdering() {
    return order.isFocusOwner();
  }

  void focusTag() {
    tag.requestFocusInWindow();
  }

  void focusOrder() {
    order.requestFocusInWindow();
  }

  private static void set(JTextField field, String text) {
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
  }

  private static AbstractAction action(Runnable run) {
    return new AbstractAction() {
      private static final long serialVersionUID = 1L;

      @Override
      public void actionPerformed(ActionEvent e) {
        run.run();
      }
    };
  }
}
