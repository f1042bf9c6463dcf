package sagwright.screen.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.finish.Extra;
import sagwright.finish.Weight;
import sagwright.grade.Order;
import sagwright.grade.OrderPractice;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.Text;

/** Weights let into the centre line, and points of mass beside the joint. */
final class WeightFields extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 2;

  private final FieldGrid weights;
  private final FieldGrid extras;
  private transient List<Weight> filledWeights = List.of();
  private transient List<Extra> filledExtras = List.of();

  WeightFields(Runnable changed) {
    super(new MigLayout("insets 0, gap 0 2, wrap", "[grow,fill]", "[][grow,fill][][grow,fill]"));
    extras =
        new FieldGrid(
            "extras", List.of("what", "x from tip, mm", "weight, g"), LINES, () -> {}, changed);
    weights =
        new FieldGrid(
            "weights",
            List.of("from, mm", "to, mm", "wide, mm", "metal"),
            LINES,
            extras::focusFirst,
            changed);
    add(Text.note("weights in the centre line, from the tip"), "wmin 0");
    add(Lists.scrolled(weights), "wmin 0, hmin 60, grow");
    add(Text.note("what else weighs: badge, bumper, thread"), "gaptop 6, wmin 0");
    add(Lists.scrolled(extras), "wmin 0, hmin 60, grow");
  }

  /**
   * @param order null for a new one
   */
  void begin(Order order) {
    fill(order == null ? List.of() : order.finish().weights());
    filledExtras = order == null ? List.of() : withoutJoint(order.finish().extras());
    extras.fill(filledExtras.stream().map(WeightFields::texts).toList());
  }

  /** All but the first that is a joint, which has fields of its own. */
  private static List<Extra> withoutJoint(List<Extra> all) {
    List<Extra> others = new ArrayList<>(all);
    for (Extra extra : all) {
      if (OrderPractice.isJoint(extra)) {
        others.remove(extra);
        break;
      }
    }
    return others;
  }

  /** Other weights than before. */
  void fill(List<Weight> others) {
    filledWeights = List.copyOf(others);
    weights.fill(filledWeights.stream().map(WeightFields::texts).toList());
  }

  private static List<String> texts(Weight weight) {
    return List.of(
        Figures.asTyped(weight.fromMm()),
        Figures.asTyped(weight.toMm()),
        Figures.asTyped(weight.diameterMm()),
        Metal.called(weight.densityKgM3()));
  }

  private static List<String> texts(Extra extra) {
    return List.of(
        extra.name() == null ? "" : extra.name(),
        Figures.asTyped(extra.xMm()),
        Figures.asTyped(extra.massG()));
  }

  /** Goes to the field that a complaint is about, as "weight 2, to"; whether it is here. */
  boolean focusOn(String field) {
    return (field.startsWith("extra") ? extras : weights).focusOn(field);
  }

  List<Weight> weights() throws ComplaintException {
    return typed(weights, filledWeights, WeightFields::texts, WeightFields::weight);
  }

  private static Weight weight(FieldGrid.Line line) throws ComplaintException {
    String at = "weight " + line.number() + ", ";
    List<String> texts = line.texts();
    return new Weight(
        mm(at + "from", texts.get(0)),
        mm(at + "to", texts.get(1)),
        mm(at + "wide", texts.get(2)),
        Metal.density(at + "metal", texts.get(3), Metal.LEAD));
  }

  List<Extra> extras() throws ComplaintException {
    return typed(extras, filledExtras, WeightFields::texts, WeightFields::extra);
  }

  private static Extra extra(FieldGrid.Line line) throws ComplaintException {
    String at = "extra " + line.number() + ", ";
    List<String> texts = line.texts();
    return new Extra(
        texts.get(0).isEmpty() ? null : texts.get(0),
        mm(at + "x", texts.get(1)),
        Typed.quantity(at + "weight", texts.get(2), Unit.GRAM));
  }

  /** What a typed line says. */
  private interface LineReader<T> {
    T read(FieldGrid.Line line) throws ComplaintException;
  }

  /** A line that stands as it was filled in is what it was filled from, to the last digit. */
  private static <T> List<T> typed(
      FieldGrid grid, List<T> filled, Function<T, List<String>> texts, LineReader<T> reader)
      throws ComplaintException {
    List<T> typed = new ArrayList<>();
    for (FieldGrid.Line line : grid.typed()) {
      T read = reader.read(line);
      typed.add(
          filled.stream()
              .filter(each -> texts.apply(each).equals(line.texts()))
              .findFirst()
              .orElse(read));
    }
    return typed;
  }

  private static double mm(String name, String text) throws ComplaintException {
    return Typed.quantity(name, text, Unit.MILLIMETRE);
  }
}
