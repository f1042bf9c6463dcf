package sagwright.screen.orders;

import java.awt.EventQueue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishProblem;
import sagwright.job.KeepTapers.KeptTaper;
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
 * Length, tip, butt, and the knots of the taper between them. A kept taper is picked by typing its
 * name, or as much of it as no other has, where the length is asked for.
 */
final class ShapeFields extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 3;

  /** A knot or an end as the plan's document has it. */
  private static final Pattern KNOT = Pattern.compile("finish\\.taper\\[(\\d+)\\]\\.(\\w+)Mm");

  private final Form form;
  private final transient Measure length;
  private final transient Measure tip;
  private final transient Measure butt;
  private final FieldGrid knots;
  private final transient Runnable ended;
  private transient List<KeptTaper> tapers = List.of();

  /** The knots as they were filled in, to come out as they were. */
  private transient List<Station> filled = List.of();

  private transient List<List<String>> filledTexts = List.of();

  /**
   * @param ended Enter was pressed behind the last knot, or a kept taper was picked
   */
  ShapeFields(ShopUnits units, Runnable ended, Runnable changed) {
    super(new MigLayout("insets 0, gap 0 2, wrap", "[grow,fill]", "[][][grow,fill]"));
    this.ended = ended;
    form = new Form("order", changed, OrderForm.BOTH_SYSTEMS_WIDTH);
    length = Measure.in(form, "length", units.length());
    tip = Measure.in(form, "tip", Unit.MILLIMETRE);
    butt = Measure.in(form, "butt", Unit.MILLIMETRE);
    knots =
        new FieldGrid("knots", List.of("x from tip, mm", "diameter, mm"), LINES, ended, changed);
    length.field().addActionListener(e -> pick());
    add(form, "wmin 0");
    add(Text.note("knots between tip and butt"), "wmin 0");
    add(Lists.scrolled(knots), "wmin 0, hmin 60, grow");
  }

  /** Tapers that may be picked. */
  void offer(List<KeptTaper> kept) {
    tapers = List.copyOf(kept);
    length.usually(kept.isEmpty() ? "" : "or a taper: " + kept.get(0).name());
  }

  void begin(List<KeptTaper> kept) {
    offer(kept);
    for (Measure measure : List.of(length, tip, butt)) {
      measure.fill(null);
    }
    filled = List.of();
    filledTexts = List.of();
    knots.fill(List.of());
  }

  /** Where the order's typing begins. */
  void focusFirst() {
    length.field().requestFocusInWindow();
  }

  /** Goes to the field that a complaint is about; whether it is here. */
  boolean focusOn(String field) {
    return form.focusOn(field) || knots.focusOn(field);
  }

  void fill(Taper taper) {
    List<Station> stations = taper.stations();
    length.fill(taper.lengthMm());
    tip.fill(stations.get(0).depthMm());
    butt.fill(stations.get(stations.size() - 1).depthMm());
    filled = stations.subList(1, stations.size() - 1);
    filledTexts =
        filled.stream()
            .map(s -> List.of(Figures.asTyped(s.xMm()), Figures.asTyped(s.depthMm())))
            .toList();
    knots.fill(filledTexts);
  }

  /** Puts the kept taper that is named where the length stands. */
  private void pick() {
    Optional<KeptTaper> named = named();
    if (named.isPresent()) {
      fill(named.get().taper());
      EventQueue.invokeLater(ended); // after Enter has gone on to the next field
    }
  }

  private Optional<KeptTaper> named() {
    String typed = length.field().getText().strip().toLowerCase(Locale.ROOT);
    if (typed.isEmpty() || !Character.isLetter(typed.codePointAt(0))) {
      return Optional.empty();
    }
    List<KeptTaper> meant =
        tapers.stream().filter(t -> t.name().toLowerCase(Locale.ROOT).startsWith(typed)).toList();
    Optional<KeptTaper> whole =
        meant.stream().filter(t -> t.name().equalsIgnoreCase(typed)).findFirst();
    return whole.isPresent() || meant.size() != 1 ? whole : Optional.of(meant.get(0));
  }

  /** Whether everything that makes a shaft is begun. */
  boolean isBegun() {
    return !length.isEmpty() && !tip.isEmpty() && !butt.isEmpty();
  }

  /** What to type next where a kept taper's name stands for the length; empty for nothing. */
  String toPick() {
    return named().map(taper -> "Enter takes the taper " + taper.name()).orElse("");
  }

  Taper taper() throws ComplaintException {
    double lengthMm = length.needed();
    List<Station> stations = new ArrayList<>();
    stations.add(Station.round(0, tip.needed()));
    for (FieldGrid.Line knot : knots.typed()) {
      stations.add(knot(knot));
    }
    stations.add(Station.round(lengthMm, butt.needed()));
    stations.sort(Comparator.comparingDouble(Station::xMm));
    Optional<FinishProblem> problem = FinishCheck.problemOfKnots(stations, lengthMm);
    if (problem.isPresent()) {
      throw new ComplaintException(
          fieldOf(problem.get(), stations.size() - 1) + ": " + problem.get().whatIsWrong());
    }
    return Taper.round(stations, lengthMm);
  }

  /** The first and the last of the taper are tip and butt, unless a knot lies before or beyond. */
  private static String fieldOf(FinishProblem problem, int last) {
    Matcher knot = KNOT.matcher(problem.key());
    if (!knot.matches()) {
      return "length";
    }
    int at = Integer.parseInt(knot.group(1));
    boolean isPlace = knot.group(2).equals("x");
    if (!isPlace && (at == 0 || at == last)) {
      return at == 0 ? "tip" : "butt";
    }
    int typed = Math.max(1, Math.min(at, last - 1));
    return "knot " + typed + ", " + (isPlace ? "x" : "diameter");
  }

  private Station knot(FieldGrid.Line knot) throws ComplaintException {
    int asFilled = filledTexts.indexOf(knot.texts());
    if (asFilled >= 0) {
      return filled.get(asFilled);
    }
    String at = "knot " + knot.number() + ", ";
    return Station.round(
        Typed.quantity(at + "x", knot.texts().get(0), Unit.MILLIMETRE),
        Typed.quantity(at + "diameter", knot.texts().get(1), Unit.MILLIMETRE));
  }
}
