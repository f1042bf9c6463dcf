package sagwright.screen.orders;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import sagwright.beam.Splice;
import sagwright.beam.Taper;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Order;
import sagwright.grade.OrderPractice;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.ColumnsLayout;
import sagwright.screen.theme.Form;
import sagwright.wood.Species;

/** What is fitted to the shaft at tip and butt: ferrule, joint, flat, splice. */
final class FittingFields extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Half the core's side at the butt where nobody says. Common practice, no source. */
  private static final double USUAL_CORE_HALF_MM = 4;

  private final Form ends;
  private final Form butt;
  private final transient Measure ferrule;
  private final transient Measure bore;
  private final JTextField metal;
  private final transient Measure joint;
  private final transient Measure jointMass;
  private final transient Measure flat;
  private final transient Measure points;
  private final JComboBox<String> wood;
  private final transient Measure core;
  private final transient Measure density;
  private final transient Measure modulus;
  private final transient Measure modulusWithin;
  private transient List<Species> woods = List.of();
  private transient Order known;

  FittingFields(ShopUnits units, Runnable changed) {
    super(new ColumnsLayout(0.02, 48, 52));
    ends = new Form("fitting", changed, OrderForm.BOTH_SYSTEMS_WIDTH);
    ferrule = Measure.in(ends, "ferrule", Unit.MILLIMETRE);
    bore = Measure.in(ends, "bore", Unit.MILLIMETRE);
    metal = ends.field("metal", "or kg/m³");
    metal.putClientProperty("JTextField.placeholderText", Metal.BRASS.word());
    joint = Measure.in(ends, "joint at", units.length());
    joint.usually("none");
    jointMass = Measure.in(ends, "joint weight", units.mass());
    flat = Measure.in(ends, "butt flat", Unit.MILLIMETRE);
    add(ends);
    butt = new Form("splice", changed, OrderForm.BOTH_SYSTEMS_WIDTH);
    points = Measure.in(butt, "splice", units.length());
    wood = butt.choice("splice wood", List.of(), true);
    wood.setPrototypeDisplayValue("a wood"); // the longest name is no reason to be wider
    core = Measure.in(butt, "half core", Unit.MILLIMETRE);
    density = Measure.in(butt, "its density", Unit.KILOGRAM_PER_CUBIC_METRE);
    modulus = Measure.in(butt, "its modulus", Unit.GIGAPASCAL);
    modulusWithin = Measure.in(butt, "modulus ±", Unit.PERCENT);
    points.usually("none");
    core.usually(Figures.asTyped(USUAL_CORE_HALF_MM));
    modulusWithin.usually("0");
    add(butt);
  }

  /**
   * @param order null for a new one
   */
  void begin(OrdersView view, Order order) {
    known = order;
    woods = view.woods();
    wood.setModel(
        new DefaultComboBoxModel<>(woods.stream().map(Species::name).toArray(String[]::new)));
    for (Measure measure :
        List.of(
            ferrule, bore, joint, jointMass, flat, points, core, density, modulus, modulusWithin)) {
      measure.fill(null);
    }
    metal.setText("");
    wood.setSelectedItem("");
    if (order != null) {
      fill(order);
    }
  }

  private void fill(Order order) {
    FinishPlan plan = order.finish();
    if (plan.ferrule() != null) {
      ferrule.fill(plan.ferrule().lengthMm());
      bore.fill(plan.ferrule().boreMm());
      metal.setText(Metal.called(plan.ferrule().densityKgM3()));
    }
    Splice splice = plan.splice();
    if (splice != null) {
      points.fill(difference(plan.lengthMm(), splice.fromMm()));
      core.fill(splice.coreHalfAtButtMm());
      density.fill(splice.densityKgM3());
      modulus.fill(splice.modulusMPa());
      modulusWithin.fill(splice.modulusUncertaintyPercent());
      String called = order.remarks().spliceWood();
      wood.setSelectedItem(called == null ? "" : called);
    }
    plan.extras().stream()
        .filter(OrderPractice::isJoint)
        .findFirst()
        .ifPresent(
            extra -> {
              joint.fill(extra.xMm());
              jointMass.fill(extra.massG());
            });
    flat.fill(order.remarks().buttFlatMm());
  }

  /** Goes to the field that a complaint is about; whether it is here. */
  boolean focusOn(String field) {
    return ends.focusOn(field) || butt.focusOn(field.replace("splice wood's", "its"));
  }

  void focusFirst() {
    ferrule.field().requestFocusInWindow();
  }

  /** As people subtract: 1473.2 less 443.2 is 1030. */
  private static double difference(double a, double b) {
    return BigDecimal.valueOf(a).subtract(BigDecimal.valueOf(b)).doubleValue();
  }

  /**
   * The plan of this shaft with what is fitted to it.
   *
   * @param others extras beside the joint
   * @param planing how it comes out of the blank
   */
  FinishPlan plan(Taper taper, List<Weight> weights, List<Extra> others, PlaningFields planing)
      throws ComplaintException {
    List<Extra> extras = new ArrayList<>();
    if (!joint.isEmpty()) {
      extras.add(new Extra(jointName(), joint.needed(), jointMass.or(0)));
    } else if (!jointMass.isEmpty()) {
      throw new ComplaintException("joint at: where is the joint that weighs so much?");
    }
    extras.addAll(others);
    return new FinishPlan(
        taper,
        planing.diameterUncertaintyMm(),
        planing.cutFromMm(),
        ferrule(),
        splice(taper),
        weights,
        extras);
  }

  private String jointName() {
    Optional<Extra> before =
        known == null
            ? Optional.empty()
            : known.finish().extras().stream().filter(OrderPractice::isJoint).findFirst();
    return before.map(Extra::name).orElse(OrderPractice.JOINT);
  }

  /** Null for a butt without a flat. */
  Double buttFlatMm() throws ComplaintException {
    Double typed = flat.optional();
    if (typed != null && !(typed > 0)) {
      throw new ComplaintException("butt flat: its length must lie above 0");
    }
    return typed;
  }

  /** Null where there is no splice, or nobody said of what. */
  String spliceWood() {
    Object typed = wood.getEditor().getItem();
    boolean none = points.isEmpty() || typed == null || typed.toString().isBlank();
    return none ? null : typed.toString().strip();
  }

  private Ferrule ferrule() throws ComplaintException {
    if (ferrule.isEmpty()) {
      if (!bore.isEmpty()) {
        throw new ComplaintException("ferrule: how long is it?");
      }
      return null;
    }
    Ferrule before = known == null ? null : known.finish().ferrule();
    boolean isAsBefore =
        before != null && metal.getText().equals(Metal.called(before.densityKgM3()));
    return new Ferrule(
        ferrule.needed(),
        bore.needed(),
        isAsBefore ? before.densityKgM3() : Metal.density("metal", metal.getText(), Metal.BRASS));
  }

  private Splice splice(Taper taper) throws ComplaintException {
    Optional<Species> published = published();
    density.usually(published.map(s -> figure(s.density12KgM3(), 1)).orElse(""));
    modulus.usually(published.map(s -> figure(s.modulus12MPa(), 1000)).orElse(""));
    if (points.isEmpty()) {
      return null;
    }
    Double publishedDensity = published.map(Species::density12KgM3).orElse(null);
    Double publishedModulus = published.map(Species::modulus12MPa).orElse(null);
    return new Splice(
        fromMm(taper),
        core.or(USUAL_CORE_HALF_MM),
        publishedDensity == null ? density.needed() : density.or(publishedDensity),
        publishedModulus == null ? modulus.needed() : modulus.or(publishedModulus),
        modulusWithin.or(0));
  }

  private double fromMm(Taper taper) throws ComplaintException {
    double fromButtMm = points.needed();
    Splice before = known == null ? null : known.finish().splice();
    boolean isAsBefore =
        before != null
            && taper.lengthMm() == known.finish().lengthMm()
            && fromButtMm == difference(taper.lengthMm(), before.fromMm());
    return isAsBefore ? before.fromMm() : difference(taper.lengthMm(), fromButtMm);
  }

  private static String figure(Double value, double unit) {
    return value == null ? "" : Figures.asTyped(value / unit);
  }

  private Optional<Species> published() {
    Object typed = wood.getEditor().getItem();
    return woods.stream()
        .filter(s -> typed != null && s.name().equalsIgnoreCase(typed.toString().strip()))
        .findFirst();
  }
}
