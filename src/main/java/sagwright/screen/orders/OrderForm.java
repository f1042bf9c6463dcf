package sagwright.screen.orders;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.Taper;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishProblem;
import sagwright.finish.Weight;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.OrderCheck;
import sagwright.grade.OrderPractice;
import sagwright.grade.OrderRemarks;
import sagwright.grade.OrderWarning;
import sagwright.screen.ComplaintException;

/**
 * An order to be written down, on three leaves: shape, ask and caller; what is fitted at tip and
 * butt; places and kept tapers. What is typed is told at each keystroke.
 */
final class OrderForm extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Room for a quantity in both systems, at zoom 1. */
  static final int BOTH_SYSTEMS_WIDTH = 150;

  private final transient Consumer<OrderDraft> listener;
  private final OrderLeaves leaves = new OrderLeaves();
  private final ShapeFields shape;
  private final AskFields ask;
  private final CallerFields caller;
  private final FittingFields fitting;
  private final WeightFields weights;
  private final SetUpFields setUps;
  private final PlaningFields planing;
  private final TaperFields tapers;
  private final ListeningPicture listening = new ListeningPicture("order.listening", 3);

  /** Beside the set-ups, where those that are asked elsewhere leave no room under the asks. */
  private final ListeningPicture listeningAtPlaces =
      new ListeningPicture("order.listeningAtPlaces", 5);

  private final WarningsPicture warnings = new WarningsPicture();
  private transient OrdersView view;
  private transient Order known;
  private boolean filling;

  /**
   * @param listener hears what is typed, on the event thread, at each keystroke
   * @param say one line for people
   */
  OrderForm(
      OrdersView first,
      OrdersActions actions,
      Consumer<OrderDraft> listener,
      Consumer<String> say) {
    super(new MigLayout("insets 4 0 0 0", "[grow,fill]", "[grow,fill]"));
    setName("orderForm");
    this.listener = listener;
    view = first;
    setUps = new SetUpFields(this::redraw);
    shape = new ShapeFields(first.units(), () -> toStiffness(1), this::redraw);
    ask = new AskFields(first.units(), setUps, this::redraw);
    caller = new CallerFields(this::redraw);
    fitting = new FittingFields(first.units(), this::redraw);
    weights = new WeightFields(this::redraw);
    planing = new PlaningFields(this::redraw);
    tapers = new TaperFields(actions, this::use, say);
    leaves.addShape(shape, OrderLeaves.stack(ask, listening), OrderLeaves.stack(caller, warnings));
    leaves.addFitting(fitting, weights);
    leaves.addPlaces(
        OrderLeaves.column(setUps, planing), OrderLeaves.over(tapers, listeningAtPlaces));
    add(leaves, "wmin 0, hmin 0");
  }

  /** Empties the form for a new order. */
  void begin(OrdersView now) {
    begin(now, null);
  }

  /** Starts from an order that is there. */
  void begin(OrdersView now, Order order) {
    filling = true;
    view = now;
    known = order;
    shape.begin(now.tapers());
    ask.begin(now, order);
    caller.begin(now, order);
    fitting.begin(now, order);
    weights.begin(order);
    planing.begin(order);
    tapers.show(now.tapers());
    if (order != null) {
      shape.fill(order.finish().taper());
    }
    filling = false;
    leaves.show(0);
    focusFirst();
    redraw();
  }

  /** The records were read anew while the form is open. */
  void refresh(OrdersView now) {
    view = now;
    tapers.show(now.tapers());
    shape.offer(now.tapers());
  }

  /**
   * What is typed, or null where it cannot be taken; then the complaint says what and where.
   *
   * @param complain hears one line
   */
  Order read(Consumer<String> complain) {
    try {
      return order(plan());
    } catch (ComplaintException e) {
      complain.accept(complained(e.getMessage()));
      return null;
    }
  }

  /** Turns to the field that a complaint is about; says it by the name that the field has here. */
  String complained(String why) {
    ComplaintException complaint = new ComplaintException(why.replaceFirst("^order: ", "number: "));
    String field = complaint.field();
    leaves.turnToWhere(
        List.of(
            () -> shape.focusOn(field) || ask.focusOn(field) || caller.focusOn(field),
            () -> fitting.focusOn(field) || weights.focusOn(field),
            () -> setUps.focusOn(field) || planing.focusOn(field)));
    return complaint.getMessage();
  }

  boolean isNew() {
    return known == null;
  }

  OrderLeaves leaves() {
    return leaves;
  }

  /** Turns to the leaf behind this one (1) or before it (-1); the focus goes to its first field. */
  void turn(int by) {
    leaves.show(leaves.open() + by);
    focusFirst();
  }

  private void focusFirst() {
    switch (leaves.open()) {
      case 0 -> shape.focusFirst();
      case 1 -> fitting.focusFirst();
      default -> setUps.focusFirst();
    }
  }

  /** Goes to the stiffness asked at the front (0), the middle (1), the butt (2). */
  void toStiffness(int place) {
    leaves.show(0);
    ask.stiffness(place).requestFocusInWindow();
  }

  /** Takes back what was done last to a kept taper; else false. */
  boolean undoTaper() {
    boolean isOpen = leaves.open() == OrderLeaves.TAPERS;
    if (isOpen) {
      tapers.undo();
    }
    return isOpen;
  }

  private void use(Taper taper) {
    shape.fill(taper);
    toStiffness(1);
  }

  private FinishPlan plan() throws ComplaintException {
    FinishPlan plan = fitting.plan(shape.taper(), weights.weights(), weights.extras(), planing);
    complainOf(FinishCheck.problemsOf(plan));
    return plan;
  }

  private Order order(FinishPlan plan) throws ComplaintException {
    ask.settle(plan.lengthMm());
    AskFields.Asks asked = ask.read();
    List<Ask> asks = asked.asks();
    Order order =
        new Order(
            caller.number(),
            caller.species(),
            caller.promisedFor(),
            caller.notes(),
            plan,
            asks.get(0),
            asks.subList(1, asks.size()),
            new OrderRemarks(fitting.buttFlatMm(), fitting.spliceWood(), asked.askedAs()));
    complainOf(OrderCheck.problemsOf(order));
    return order;
  }

  private static void complainOf(List<FinishProblem> problems) throws ComplaintException {
    if (!problems.isEmpty()) {
      throw new ComplaintException(ProblemWords.of(problems.get(0)));
    }
  }

  /** Other weights than before; the rest stays as it is typed. */
  void takeWeights(List<Weight> others) {
    weights.fill(others);
  }

  /** Tells what is typed, and shows what it means. */
  private void redraw() {
    if (filling) {
      return;
    }
    OrderDraft draft = draft();
    listener.accept(draft);
    ask.explain();
    for (ListeningPicture picture : List.of(listening, listeningAtPlaces)) {
      picture.show(
          draft.plan() == null ? null : draft.plan().taper(),
          ListeningWords.strips(ask.places(), draft.plan(), wood()),
          wood().modulusToShearRatio());
    }
    warnings.show(
        draft.order() == null
            ? List.of()
            : OrderPractice.warningsOf(draft.order()).stream().map(OrderWarning::inWords).toList());
    tapers.show(draft.plan() == null ? null : draft.plan().taper());
  }

  private ListeningWords.Wood wood() {
    String name = caller.species();
    return ListeningWords.Wood.of(
        view.woods().stream().filter(s -> s.name().equalsIgnoreCase(name)).findFirst());
  }

  private OrderDraft draft() {
    FinishPlan plan = null;
    try {
      plan = plan();
      return new OrderDraft(plan, order(plan), "");
    } catch (ComplaintException e) {
      return new OrderDraft(plan, null, wanting(e));
    }
  }

  private String wanting(ComplaintException complaint) {
    String pick = shape.toPick();
    if (!pick.isEmpty()) {
      return pick;
    }
    if (shape.isBegun()) {
      return complaint.getMessage();
    }
    return view.tapers().isEmpty()
        ? "Length, tip and butt, and the shaft is drawn here."
        : "Length, tip and butt, or a kept taper's name, and the shaft is drawn here.";
  }
}
