package sagwright.screen.orders;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.FinishDrawing;
import sagwright.finish.Weight;
import sagwright.grade.Order;
import sagwright.grade.WordScale;
import sagwright.job.PlannedFinish;
import sagwright.screen.ShaftPicture;
import sagwright.screen.ShopUnits;
import sagwright.screen.finish.PlanPicture;
import sagwright.screen.finish.PlanScene;
import sagwright.screen.theme.QuietButton;

/**
 * What is to be made, drawn beside the form as it is typed: the finish plan in the blank that it
 * would be cut from, and what comes of it. Ctrl B lays it in the next blank, Ctrl L takes the lead
 * that was worked out into the order, Ctrl Z takes it back.
 */
final class FinishPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final String BEGIN = "Length, tip and butt, and the shaft is drawn here.";

  private final transient OrdersActions actions;
  private final ShopUnits units;
  private final transient Consumer<List<Weight>> takeWeights;
  private final ShaftPicture drawing = new ShaftPicture("order.drawing", BEGIN);
  private final PlanPicture plan;
  private final QuietButton next =
      new QuietButton("order.next", "next blank", "Ctrl B", this::nextBlank);
  private final QuietButton take =
      new QuietButton("order.lead", "take this lead", "Ctrl L", this::takeLead);
  private final QuietButton back =
      new QuietButton("order.back", "take it back", "Ctrl Z", this::takeBack);
  private final transient Deque<List<Weight>> before = new ArrayDeque<>();
  private transient WordScale words;
  private transient Order order;
  private transient PlannedFinish finish;
  private String pickedTag;

  /**
   * @param takeWeights puts other weights into the order that is typed
   */
  FinishPanel(OrdersActions actions, ShopUnits units, Consumer<List<Weight>> takeWeights) {
    super(new MigLayout("insets 0, gap 0 2, hidemode 3", "[grow,fill]", "[grow,fill][]"));
    this.actions = actions;
    this.units = units;
    this.takeWeights = takeWeights;
    this.plan = new PlanPicture("order.plan");
    JPanel keys = new JPanel(new MigLayout("insets 0, gap 4 0, hidemode 3"));
    keys.setOpaque(false);
    keys.add(next);
    keys.add(take);
    keys.add(back);
    add(drawing, "wrap, hmin 150");
    JPanel strip = new JPanel(new StripLayout(plan, keys));
    strip.add(keys);
    strip.add(plan);
    add(strip);
    buttons();
  }

  /** A new order, or another one. */
  void begin(WordScale shopsWords) {
    words = shopsWords;
    pickedTag = null;
    before.clear();
  }

  /** Called on the event thread each time that something is typed. */
  void show(OrderDraft draft) {
    order = draft.order();
    if (order != null) {
      Order asked = order;
      actions.plan(
          asked,
          pickedTag,
          planned -> {
            if (planned.order().equals(order)) {
              show(planned);
            }
          });
      return;
    }
    finish = null;
    plan.showWanting(draft.plan() == null ? "" : draft.wanting());
    if (draft.plan() == null) {
      drawing.showWanting(draft.wanting());
    } else {
      drawing.show(FinishDrawing.Scene.of(draft.plan()));
    }
    buttons();
  }

  private void show(PlannedFinish planned) {
    finish = planned;
    plan.show(planned, words, units);
    drawing.show(PlanScene.of(planned));
    buttons();
  }

  private void buttons() {
    next.setVisible(finish != null && finish.tags().size() > 1);
    take.setVisible(canTakeLead());
    back.setVisible(!before.isEmpty());
    revalidate();
  }

  private boolean canTakeLead() {
    return finish != null && finish.lead().canBeTaken();
  }

  /** Lays the plan in the blank that comes next to the best, after the last in the best again. */
  void nextBlank() {
    if (finish != null && finish.tags().size() > 1) {
      List<String> tags = finish.tags();
      pickedTag = tags.get((tags.indexOf(finish.blank().tag()) + 1) % tags.size());
      show(new OrderDraft(order.finish(), order, ""));
    }
  }

  void takeLead() {
    if (canTakeLead()) {
      before.push(order.finish().weights());
      takeWeights.accept(finish.lead().weights());
    }
  }

  void takeBack() {
    if (!before.isEmpty()) {
      takeWeights.accept(before.pop());
    }
  }
}
