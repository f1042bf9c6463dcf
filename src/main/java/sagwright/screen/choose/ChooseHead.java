package sagwright.screen.choose;

import java.awt.event.KeyEvent;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.screen.theme.Text;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.UnderlinedField;

/** The head of the Choose page: which order, and what it asks. */
final class ChooseHead extends JPanel {
  private static final long serialVersionUID = 1L;

  private final UnderlinedField order =
      new UnderlinedField("choose.order", "type an order's number");
  private final JLabel details = Text.second("");
  private final JLabel asks = Text.strong("");

  /**
   * @param toWork takes the focus once an order is opened
   */
  ChooseHead(ChooseActions actions, Runnable toWork) {
    super(new MigLayout("insets 0 0 4 0, aligny bottom, fillx", "[]14[grow,shrink]20[]", "[]"));
    setName("choose.head");
    asks.setFont(Theme.style().lettering().semiBold(20));
    add(order, "aligny baseline");
    add(details, "aligny baseline, wmin 0");
    add(asks, "aligny baseline");
    order.addActionListener(
        e -> {
          actions.open(order.getText().trim());
          toWork.run();
        });
    step(KeyEvent.VK_DOWN, () -> actions.step(1));
    step(KeyEvent.VK_UP, () -> actions.step(-1));
  }

  /** In the field, Up and Down step through the open orders. */
  private void step(int keyCode, Runnable run) {
    order.registerKeyboardAction(
        e -> run.run(), KeyStroke.getKeyStroke(keyCode, 0), JComponent.WHEN_FOCUSED);
  }

  void show(ChooseView view, boolean isAnother) {
    String number = view.order() == null ? "" : view.order().number();
    if (isAnother || !order.isFocusOwner()) {
      if (!order.getText().equals(number)) {
        order.setText(number);
        order.selectAll();
      }
    }
    details.setText(view.order() == null ? "" : view.order().details());
    asks.setText(view.order() == null ? "" : view.order().asks());
  }

  void focusOrder() {
    order.requestFocusInWindow();
  }
}
