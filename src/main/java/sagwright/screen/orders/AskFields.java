package sagwright.screen.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.SetUp;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Form;

/**
 * What is asked: a stiffness at the front, the middle and the butt, where nobody says otherwise;
 * weight and balance; and stiffness elsewhere, where an order asks for it. Each with its tolerance.
 */
final class AskFields extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int BEHIND_WIDTH = 156;

  /** As {@link ProblemWords} calls an ask behind the first. */
  private static final Pattern FURTHER = Pattern.compile("further ask (\\d+)");

  private final Form form;
  private final transient AskRow front;
  private final transient AskRow middle;
  private final transient AskRow butt;
  private final transient List<AskRow> elsewhere = new ArrayList<>();
  private final transient Measure.Within mass;
  private final transient Measure.Within balance;
  private final transient SetUpFields setUps;

  /** Those that an order asks for, in its own order; then the others. */
  private transient List<AskRow> inOrder;

  private transient OrdersView view;
  private transient AskWords words;

  AskFields(ShopUnits units, SetUpFields setUps, Runnable changed) {
    super(new MigLayout("insets 0", "[grow,fill]", ""));
    this.setUps = setUps;
    form = new Form("ask", changed, BEHIND_WIDTH);
    front = new AskRow(form, "front", "F6");
    middle = new AskRow(form, "middle", "F7");
    butt = new AskRow(form, "butt", "F8");
    mass = Measure.Within.in(form, "weight", units.mass());
    balance = Measure.Within.in(form, "balance", units.length());
    balance.value().field().setToolTipText("from the butt end");
    add(form, "wmin 0");
    addElsewhere();
    inOrder = rows();
  }

  private AskRow addElsewhere() {
    String name = elsewhere.isEmpty() ? "elsewhere" : "elsewhere " + (elsewhere.size() + 1);
    AskRow row = new AskRow(form, name, "");
    elsewhere.add(row);
    setUps.require(elsewhere.size());
    form.show(row.field(), false);
    return row;
  }

  /** The middle, which is asked first where nothing else is said, then the others. */
  private List<AskRow> rows() {
    List<AskRow> rows = new ArrayList<>(List.of(middle, front, butt));
    rows.addAll(elsewhere);
    return rows;
  }

  /**
   * @param order null for a new one
   */
  void begin(OrdersView now, Order order) {
    view = now;
    words = new AskWords(now.words(), now.cues());
    setUps.begin(now.places());
    front.begin(words, now.places().front());
    middle.begin(words, now.places().middle());
    butt.begin(words, now.places().butt());
    elsewhere.forEach(row -> row.begin(words, now.places().middle()));
    mass.value().fill(null);
    mass.tolerance().fill(null);
    balance.value().fill(null);
    balance.tolerance().fill(null);
    inOrder = rows();
    if (order != null) {
      fill(order);
    }
  }

  private void fill(Order order) {
    stand(order.finish().lengthMm());
    List<AskRow> taken = new ArrayList<>();
    List<Ask> asks = order.asks();
    for (int i = 0; i < asks.size(); i++) {
      AskRow row = rowFor(asks.get(i).setUp(), taken);
      taken.add(row);
      row.standAt(asks.get(i).setUp());
      row.fill(asks.get(i), order.remarks().askedAs(i));
    }
    inOrder = new ArrayList<>(taken);
    rows().stream().filter(row -> !taken.contains(row)).forEach(inOrder::add);
    fill(mass, order.ask().massG());
    fill(balance, order.ask().balanceFromButtMm());
  }

  private static void fill(Measure.Within within, Aim aim) {
    within.value().fill(aim == null ? null : aim.value());
    within.tolerance().fill(aim == null ? null : aim.tolerance());
  }

  /** The row that stands there, else one that is asked elsewhere. */
  private AskRow rowFor(SetUp at, List<AskRow> taken) {
    for (AskRow row : List.of(middle, front, butt)) {
      if (row.at().equals(at) && !taken.contains(row)) {
        return row;
      }
    }
    AskRow free = elsewhere.stream().filter(row -> !taken.contains(row)).findFirst().orElse(null);
    AskRow row = free == null ? addElsewhere() : free;
    row.begin(words, at);
    setUps.fillElsewhere(elsewhere.indexOf(row), at);
    return row;
  }

  /** The set-ups on a shaft of this length, as far as nobody says otherwise. */
  private void stand(double lengthMm) {
    front.standAt(AskPlaces.on(lengthMm, view.places().front()));
    middle.standAt(AskPlaces.on(lengthMm, view.places().middle()));
    butt.standAt(AskPlaces.on(lengthMm, view.places().butt()));
  }

  /** Puts every row where it is to stand, and says behind it what it means. */
  void settle(double lengthMm) throws ComplaintException {
    stand(lengthMm);
    setUps.showUsual(List.of(front.at(), middle.at(), butt.at()));
    stand(front, setUps.front());
    stand(middle, setUps.middle());
    stand(butt, setUps.butt());
    for (int i = 0; i < elsewhere.size(); i++) {
      SetUp typed = setUps.elsewhere(i);
      form.show(elsewhere.get(i).field(), typed != null);
      stand(elsewhere.get(i), typed);
    }
  }

  private static void stand(AskRow row, SetUp typed) {
    if (typed != null) {
      row.standAt(typed);
    }
  }

  void explain() {
    rows().forEach(AskRow::explain);
  }

  /** The rows with something typed, the order's first ask first. */
  private List<AskRow> asked() {
    return inOrder.stream().filter(row -> !row.isEmpty()).toList();
  }

  /** What is asked, the first with weight and balance; and how each was put. */
  record Asks(List<Ask> asks, List<String> askedAs) {}

  Asks read() throws ComplaintException {
    Aim massAim = aim(mass);
    Aim balanceAim = aim(balance);
    List<AskRow> asked = asked();
    if (asked.isEmpty()) {
      middle.read(); // says that a stiffness is wanted
    }
    List<Ask> asks = new ArrayList<>();
    List<String> askedAs = new ArrayList<>();
    for (AskRow row : asked) {
      AskRow.Row read = row.read();
      Ask ask = read.ask();
      boolean isFirst = asks.isEmpty();
      asks.add(
          new Ask(
              ask.setUp(),
              ask.stiffnessNPerMm(),
              ask.tolerancePercent(),
              isFirst ? massAim : null,
              isFirst ? balanceAim : null));
      askedAs.add(read.asked().askedAs());
    }
    return new Asks(asks, askedAs.stream().allMatch(String::isEmpty) ? List.of() : askedAs);
  }

  private static Aim aim(Measure.Within within) throws ComplaintException {
    Double value = within.value().optional();
    Double tolerance = within.tolerance().optional();
    if (value == null && tolerance != null) {
      throw new ComplaintException(within.value().name() + ": ± of what?");
    }
    return value == null ? null : new Aim(value, tolerance);
  }

  /** Goes to the field that a complaint is about; whether it is here. */
  boolean focusOn(String field) {
    Matcher further = FURTHER.matcher(field);
    int ask = further.matches() ? Integer.parseInt(further.group(1)) : 0;
    boolean isOfAsk = further.matches() || field.equals("stiffness") || field.equals("tolerance");
    String label = isOfAsk && ask < asked().size() ? asked().get(ask).name() : field;
    return form.focusOn(field.equals("tolerance") ? label + " ±" : label);
  }

  /** A set-up with its name. */
  record Place(String name, SetUp setUp) {}

  /** The set-ups that are asked at; the middle where none is. */
  List<Place> places() {
    List<AskRow> asked = new ArrayList<>();
    for (AskRow row : List.of(front, middle, butt)) {
      if (!row.isEmpty()) {
        asked.add(row);
      }
    }
    elsewhere.stream().filter(row -> !row.isEmpty()).forEach(asked::add);
    return (asked.isEmpty() ? List.of(middle) : asked)
        .stream().map(row -> new Place(row.name(), row.at())).toList();
  }

  /** Front, middle, butt. */
  JTextField stiffness(int place) {
    return List.of(front, middle, butt).get(place).field();
  }
}
