package sagwright.screen.orders;

import java.awt.BorderLayout;
import javax.swing.JPanel;
import sagwright.drawing.FinishDrawing;
import sagwright.screen.ShaftPicture;

/** What is to be made, drawn beside the form as it is typed. */
final class FinishPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final ShaftPicture drawing =
      new ShaftPicture("order.drawing", "Length, tip and butt, and the shaft is drawn here.");

  FinishPanel() {
    super(new BorderLayout());
    add(drawing, BorderLayout.CENTER);
  }

  /** Called on the event thread each time that something is typed. */
  void show(OrderDraft draft) {
    if (draft.plan() == null) {
      drawing.showWanting(draft.wanting());
    } else {
      drawing.show(FinishDrawing.Scene.of(draft.plan()));
    }
  }
}
