package sagwright.screen.orders;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishProblem;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.OrderCheck;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.Text;

/**
 * An order to be written down: what every order needs at the left, what it may have in the middle,
 * knots of the taper between tip and butt at the right. What is typed is told at each keystroke.
 */
final class OrderForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 4;
  private static final double USUAL_TOLERANCE_PERCENT = 5;

  private final ShopUnits units;
  private final JTextField number;
  private final JTextField length;
  private final JTextField tip;
  private final JTextField butt;
  private final JTextField notes;
  private final JComboBox<String> species;
  private final JTextField promisedFor;
  private final JTextField stiffness;
  private final JTextField tolerance;
  private final JTextField mass;
  private final JTextField massTolerance;
  private final JTextField balance;
  private final JTextField balanceTolerance;
  private final JTextField setUp;
  private final FieldGrid knots;
  private final transient Consumer<OrderDraft> listener;
  private final AskPicture line = new AskPicture();
  private transient OrdersView view;
  private transient Order known;
  private transient List<Weight> weights = List.of();

  /**
   * @param listener hears what is typed, on the event thread, at each keystroke
   */
  OrderForm(OrdersView first, Runnable ended, Consumer<OrderDraft> listener) {
    super(
        new MigLayout(
            "insets 4 0 0 0, gap 32 4",
            "[grow,fill,sg c][grow,fill,sg c][grow,fill,270:23%]",
            "[grow,fill]"));
    setName("orderForm");
    this.listener = listener;
    view = first;
    units = first.units();
    Form needed = new Form("order", this::redraw);
    length = needed.field("length", units.length().symbol());
    tip = needed.field("tip", "mm");
    butt = needed.field("butt", "mm");
    stiffness = needed.field("stiffness", "N/mm");
    tolerance = needed.field("give or take", "%");
    number = needed.field("number", "");
    promisedFor = needed.field("promised for", "");
    promisedFor.putClientProperty("JTextField.placeholderText", "2026-06-30");
    Form further = new Form("further", this::redraw);
    notes = further.field("who for", "");
    species = further.choice("wood", List.of(), true);
    mass = further.field("weight", units.mass().symbol());
    massTolerance = further.field("weight ±", units.mass().symbol());
    balance = further.field("balance", units.length().symbol());
    balanceTolerance = further.field("balance ±", units.length().symbol());
    setUp = further.field("set-up", "mm");
    knots =
        new FieldGrid(
            "knots", List.of("x from tip, mm", "diameter, mm"), LINES, ended, this::redraw);
    JPanel right = new JPanel(new MigLayout("insets 0, gap 0 4", "[grow,fill]", "[][grow,fill][]"));
    right.add(Text.note("knots between tip and butt"), "wrap");
    right.add(Lists.scrolled(knots), "grow, hmin 60, wrap 16");
    right.add(line, "growx");
    add(needed, "aligny top");
    add(further, "aligny top");
    add(right, "grow");
  }

  /** Empties the form for a new order. */
  void begin(OrdersView now) {
    view = now;
    known = null;
    weights = List.of();
    number.setEnabled(true);
    fill(number, now.nextNumber());
    species.setModel(new DefaultComboBoxModel<>(now.species().toArray(String[]::new)));
    species.setSelectedItem("");
    for (JTextField field :
        new JTextField[] {
          length,
          tip,
          butt,
          notes,
          promisedFor,
          stiffness,
          mass,
          massTolerance,
          balance,
          balanceTolerance
        }) {
      field.setText("");
    }
    fill(tolerance, Figures.asTyped(USUAL_TOLERANCE_PERCENT));
    fill(setUp, inWords(now.usual()));
    knots.fill(List.of());
    length.requestFocusInWindow();
  }

  /** Starts from an order that is there; what the form does not show stays with it. */
  void begin(OrdersView now, Order order) {
    begin(now);
    known = order;
    weights = order.finish().weights();
    number.setEnabled(false);
    fill(number, order.number());
    FinishPlan plan = order.finish();
    List<Station> stations = plan.taper().stations();
    fill(length, Figures.asTyped(units.length().fromBase(plan.lengthMm())));
    fill(tip, Figures.asTyped(stations.get(0).depthMm()));
    fill(butt, Figures.asTyped(stations.get(stations.size() - 1).depthMm()));
    fill(notes, order.notes() == null ? "" : order.notes());
    species.setSelectedItem(order.species() == null ? "" : order.species());
    fill(promisedFor, order.promisedFor() == null ? "" : order.promisedFor().toString());
    Ask ask = order.ask();
    fill(stiffness, Figures.asTyped(ask.stiffnessNPerMm()));
    fill(tolerance, Figures.asTyped(ask.tolerancePercent()));
    fill(mass, massTolerance, ask.massG(), units.mass());
    fill(balance, balanceTolerance, ask.balanceFromButtMm(), units.length());
    fill(setUp, inWords(ask.setUp()));
    knots.fill(
        stations.subList(1, stations.size() - 1).stream()
            .map(s -> List.of(Figures.asTyped(s.xMm()), Figures.asTyped(s.depthMm())))
            .toList());
  }

  private static void fill(JTextField field, String text) {
    field.setText(text);
  }

  private static void fill(JTextField value, JTextField tolerance, Aim aim, Unit unit) {
    fill(value, aim == null ? "" : Figures.asTyped(unit.fromBase(aim.value())));
    boolean open = aim == null || aim.tolerance() == null;
    fill(tolerance, open ? "" : Figures.asTyped(unit.fromBase(aim.tolerance())));
  }

  private static String inWords(SetUp s) {
    return String.join(
        ", ",
        Figures.asTyped(s.supportAMm()),
        Figures.asTyped(s.supportBMm()),
        Figures.asTyped(s.loadMm()),
        Figures.asTyped(s.gaugeMm()));
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
      complain.accept(e.getMessage());
      return null;
    }
  }

  boolean isNew() {
    return known == null;
  }

  private FinishPlan plan() throws ComplaintException {
    Taper taper = taper();
    FinishPlan plan =
        known == null ? FinishPlan.bare(taper).withWeights(weights) : with(taper, known.finish());
    complainOf(FinishCheck.problemsOf(plan));
    return plan;
  }

  private Order order(FinishPlan plan) throws ComplaintException {
    Object wood = species.getEditor().getItem();
    boolean anyWood = wood == null || wood.toString().isBlank();
    Order order =
        new Order(
            number.getText().trim(),
            anyWood ? null : wood.toString().trim(),
            day(),
            notes.getText().isBlank() ? null : notes.getText().trim(),
            plan,
            ask(),
            known == null ? List.of() : known.alsoAsked());
    complainOf(OrderCheck.problemsOf(order));
    return order;
  }

  private static void complainOf(List<FinishProblem> problems) throws ComplaintException {
    if (!problems.isEmpty()) {
      throw new ComplaintException(problems.get(0).key() + ": " + problems.get(0).whatIsWrong());
    }
  }

  private FinishPlan with(Taper taper, FinishPlan plan) {
    return new FinishPlan(
        taper,
        plan.diameterUncertaintyMm(),
        plan.cutFromMm(),
        plan.ferrule(),
        plan.splice(),
        weights,
        plan.extras());
  }

  /** Other weights than before; the rest stays as it is typed. */
  void takeWeights(List<Weight> others) {
    weights = others;
    redraw();
  }

  private Taper taper() throws ComplaintException {
    double lengthMm = Typed.quantity("length", length.getText(), units.length());
    List<Station> stations = new ArrayList<>();
    stations.add(Station.round(0, Typed.quantity("tip", tip.getText(), Unit.MILLIMETRE)));
    for (FieldGrid.Line knot : knots.typed()) {
      String at = "knot " + knot.number() + ", ";
      stations.add(
          Station.round(
              Typed.quantity(at + "x", knot.texts().get(0), Unit.MILLIMETRE),
              Typed.quantity(at + "diameter", knot.texts().get(1), Unit.MILLIMETRE)));
    }
    stations.add(Station.round(lengthMm, Typed.quantity("butt", butt.getText(), Unit.MILLIMETRE)));
    stations.sort(Comparator.comparingDouble(Station::xMm));
    Optional<FinishProblem> problem = FinishCheck.problemOfKnots(stations, lengthMm);
    if (problem.isPresent()) {
      throw new ComplaintException("taper: " + problem.get().whatIsWrong());
    }
    return Taper.round(stations, lengthMm);
  }

  private Ask ask() throws ComplaintException {
    SetUp at = setUp();
    Aim massAim = aim("weight", mass, massTolerance, units.mass());
    Aim balanceAim = aim("balance", balance, balanceTolerance, units.length());
    String typed = stiffness.getText().trim();
    if (view.words() != null && view.words().words().contains(typed)) {
      Ask word = view.words().askFor(typed);
      return new Ask(
          word.setUp(), word.stiffnessNPerMm(), word.tolerancePercent(), massAim, balanceAim);
    }
    double asked = Typed.quantity("stiffness", typed, Unit.NEWTON_PER_MILLIMETRE);
    double percent = Typed.quantity("give or take", tolerance.getText(), Unit.PERCENT);
    return new Ask(at, asked, percent, massAim, balanceAim);
  }

  private static Aim aim(String name, JTextField value, JTextField tolerance, Unit unit)
      throws ComplaintException {
    Double aimed = Typed.optional(name, value.getText(), unit);
    Double within = Typed.optional(name + " ±", tolerance.getText(), unit);
    return aimed == null ? null : new Aim(aimed, within);
  }

  private SetUp setUp() throws ComplaintException {
    String[] parts = setUp.getText().trim().split("[,;\\s]+");
    if (parts.length != 4) {
      throw new ComplaintException("set-up: supports, load and gauge, as 100, 1100, 600, 600");
    }
    double[] mm = new double[4];
    for (int i = 0; i < 4; i++) {
      mm[i] = Typed.quantity("set-up", parts[i], Unit.MILLIMETRE);
    }
    try {
      return new SetUp(mm[0], mm[1], mm[2], mm[3], 0);
    } catch (IllegalArgumentException e) {
      throw new ComplaintException("set-up: " + e.getMessage());
    }
  }

  private LocalDate day() throws ComplaintException {
    String typed = promisedFor.getText().trim();
    try {
      return typed.isEmpty() ? null : LocalDate.parse(typed);
    } catch (DateTimeParseException e) {
      throw new ComplaintException("promised for: a day like 2026-06-30, not " + typed);
    }
  }

  /** Tells what is typed, and draws the ask. */
  private void redraw() {
    listener.accept(draft());
    try {
      Ask ask = ask();
      boolean usual = view.words() != null && ask.setUp().equals(view.words().usual());
      line.show(ask, usual ? view.words() : null);
    } catch (ComplaintException e) {
      line.show(null, null);
    }
  }

  private OrderDraft draft() {
    FinishPlan plan = null;
    try {
      plan = plan();
      return new OrderDraft(plan, order(plan), "");
    } catch (ComplaintException e) {
      boolean begun =
          !length.getText().isBlank() && !tip.getText().isBlank() && !butt.getText().isBlank();
      return new OrderDraft(
          plan,
          null,
          begun ? e.getMessage() : "Length, tip and butt, and the shaft is drawn here.");
    }
  }
}
