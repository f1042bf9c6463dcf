package sagwright.screen.checks;

import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.check.CheckRod;
import sagwright.job.RodStanding;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Text;
import sagwright.uncertainty.Estimate;

/** The check rod: what it is, what was read of it elsewhere, and its chart. */
final class RodCard extends CheckCard {
  private static final long serialVersionUID = 1L;
  private static final String FIRST_TAG = "rod-1";

  private final transient ChecksActions actions;
  private final Form form = new Form("rod", () -> {});
  private final JTextField tag = form.field("tag", "");
  private final JTextField diameter = form.field("diameter", "mm");
  private final JTextField diameterWithin = form.field("known within ±", "mm");
  private final JTextField length = form.field("length", "mm");
  private final JTextField modulus = form.field("steel's modulus", "GPa");
  private final JTextField modulusWithin = form.field("within ±", "GPa");
  private final Form typed = new Form("rodReading", () -> {});
  private final JTextField shown = typed.field("stiffness, N/mm", "");
  private final RodPicture picture = new RodPicture("rod.chart");
  private transient RodStanding filledFrom;

  RodCard(ChecksActions actions, Speech speech) {
    super(
        "rod",
        "Check rod",
        speech,
        new MigLayout("insets 0 0 8 0, gap 30 8", "[38%,fill][grow,fill]", "[][]24[][][][grow]"));
    this.actions = actions;
    add(Text.label("A ground steel rod, about as stiff as a shaft", 20, true));
    JPanel right = new JPanel(new MigLayout("insets 0", "[grow,fill]", "[grow,fill]"));
    right.add(picture, "grow, hmin 200");
    add(right, "spany 6, grow, wrap");
    add(form, "growx, wrap");
    add(Text.label("A reading noted elsewhere", 20, true), "wrap");
    add(typed, "growx, wrap");
    add(Text.second("frame taken off, on the usual set-up; Enter keeps it"), "wmin 0");
    shown.addActionListener(e -> typeReading());
  }

  private void typeReading() {
    if (shown.getText().isBlank()) {
      return;
    }
    try {
      double stiffness = Typed.quantity("stiffness", shown.getText(), Unit.NEWTON_PER_MILLIMETRE);
      if (!(stiffness > 0)) {
        throw new ComplaintException("stiffness: must lie above 0");
      }
      actions.typeRod(
          stiffness,
          then(
              () -> {
                shown.setText("");
                say("The reading is kept.  Ctrl Z takes it back.");
              }));
    } catch (ComplaintException e) {
      say(e.getMessage());
    }
  }

  private CheckRod rod() throws ComplaintException {
    return new CheckRod(
        above0("length", length, Unit.MILLIMETRE),
        within("diameter", diameter, diameterWithin, Unit.MILLIMETRE),
        within("steel's modulus", modulus, modulusWithin, Unit.GIGAPASCAL),
        CheckRod.ASSUMED_STEEL_POISSON_RATIO);
  }

  private static Estimate within(String name, JTextField value, JTextField within, Unit unit)
      throws ComplaintException {
    double half = Typed.quantity(name + ", within ±", within.getText(), unit);
    if (half < 0) {
      throw new ComplaintException(name + ", within ±: must not lie below 0");
    }
    return new Estimate(above0(name, value, unit), half / Estimate.COVERAGE_FACTOR_95);
  }

  private static double above0(String name, JTextField field, Unit unit) throws ComplaintException {
    double value = Typed.quantity(name, field.getText(), unit);
    if (!(value > 0)) {
      throw new ComplaintException(name + ": must lie above 0");
    }
    return value;
  }

  @Override
  String details() {
    return "tested every morning, it proves the bench; ± is 95 %";
  }

  @Override
  String foot() {
    return "Mark where the supports stand and which side lies up.";
  }

  @Override
  String keys() {
    return "Enter goes on, Ctrl Enter keeps the rod.  T on the list before tests it.  Esc goes"
        + " back.";
  }

  @Override
  String control() {
    return "Keep the rod";
  }

  @Override
  void press() {
    try {
      String name = tag.getText().trim();
      actions.enterRod(name, rod(), doneSaying("The rod is kept.  T tests it."));
    } catch (ComplaintException e) {
      say(e.getMessage());
    }
  }

  @Override
  void takeBack() {
    actions.undo(then(() -> say("Taken back.")));
  }

  @Override
  void begin() {
    diameter.requestFocusInWindow();
  }

  @Override
  void show(ChecksView view) {
    picture.show(view.rod());
    boolean same = filledFrom != null && filledFrom.rod() == null && view.rod().rod() == null;
    boolean known = filledFrom != null && filledFrom.hasRod();
    if (same || (known && filledFrom.rod().equals(view.rod().rod()))) {
      return;
    }
    filledFrom = view.rod();
    fill(view.rod());
  }

  private void fill(RodStanding standing) {
    boolean has = standing.hasRod();
    Estimate steel = has ? standing.rod().rod().modulusMPa() : CheckRod.ASSUMED_STEEL_MODULUS_MPA;
    tag.setText(has ? standing.rod().blank().tag() : FIRST_TAG);
    diameter.setText(has ? Figures.asTyped(standing.rod().rod().diameterMm().value()) : "");
    diameterWithin.setText(
        has ? Figures.rounded(standing.rod().rod().diameterMm().halfWidth95(), 4) : "0.01");
    length.setText(has ? Figures.asTyped(standing.rod().rod().lengthMm()) : "");
    modulus.setText(Figures.rounded(Unit.GIGAPASCAL.fromBase(steel.value()), 1));
    modulusWithin.setText(Figures.rounded(Unit.GIGAPASCAL.fromBase(steel.halfWidth95()), 1));
    for (JTextField field : List.of(diameter, length)) {
      field.setCaretPosition(0);
    }
  }
}
