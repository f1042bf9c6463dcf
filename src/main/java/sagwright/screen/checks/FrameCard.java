package sagwright.screen.checks;

import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.check.CheckRod;
import sagwright.job.Signature;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Text;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;

/** What the frame gives, from a stout bar of known modulus. */
final class FrameCard extends SignedCard {
  private static final long serialVersionUID = 1L;

  /** More points to a loose screw (common practice, no source). */
  private static final double SUSPICIOUS_MM_PER_N = 0.005;

  private static final double USUAL_LOAD_N = 20;

  private final transient ChecksActions actions;
  private final Form form = new Form("frame", () -> {});
  private final JTextField bar = form.field("bar", "");
  private final JTextField modulus = form.field("its modulus", "GPa");
  private final JTextField uncertainty = form.field("known within ±", "GPa");
  private final JLabel answer = Text.label(" ", 24, true);
  private final JLabel meaning = Text.plain(" ");
  private final JLabel warning = Text.second(" ");

  FrameCard(ChecksActions actions, Speech speech) {
    super(
        "frame",
        "Frame",
        speech,
        new MigLayout("insets 0 0 8 0, gap 0 10", "[64%,fill]", "[][][][][][]push[]"));
    this.actions = actions;
    add(Text.label("A ground steel bar, 30 mm or so: it hardly bends itself.", 20, true), "wrap");
    add(
        Text.plain(
            "Enter it on the Rack, lay it on the bench, test it; then name its tag here.  Or a"
                + " sheet's file."),
        "wrap");
    add(form, "growx, wrap");
    add(answer, "wrap");
    add(meaning, "wrap");
    add(warning, "wrap");
    add(sign(), "growx 0");
    modulus.setText(gigapascal(CheckRod.ASSUMED_STEEL_MODULUS_MPA.value()));
    uncertainty.setText(gigapascal(CheckRod.ASSUMED_STEEL_MODULUS_MPA.halfWidth95()));
    for (JTextField field : List.of(bar, modulus, uncertainty)) {
      field.addActionListener(e -> work());
    }
  }

  private static String gigapascal(double megapascal) {
    return Figures.rounded(Unit.GIGAPASCAL.fromBase(megapascal), 1);
  }

  /** Enter in any field works it out, once a bar is named. */
  private void work() {
    if (bar.getText().isBlank()) {
      return;
    }
    try {
      double known = Typed.quantity("its modulus", modulus.getText(), Unit.GIGAPASCAL);
      double within = Typed.quantity("known within ±", uncertainty.getText(), Unit.GIGAPASCAL);
      if (!(known > 0) || within < 0) {
        throw new ComplaintException("its modulus: must lie above 0");
      }
      Estimate estimate = new Estimate(known, within / Estimate.COVERAGE_FACTOR_95);
      actions.workFrame(bar.getText().trim(), estimate, then(() -> say("")));
    } catch (ComplaintException e) {
      say(e.getMessage());
    }
  }

  @Override
  String details() {
    return "the bed bends too, and the gauge cannot tell";
  }

  @Override
  String foot() {
    return "Look for loose screws first.  A bar rolls off and falls: feet clear.";
  }

  @Override
  String keys() {
    return "Enter works it out, Ctrl Enter keeps it.  Esc goes back.";
  }

  @Override
  void keep(Signature signature) {
    actions.keepFrame(signature, doneSaying("The frame is kept.  Ctrl Z takes it back."));
  }

  @Override
  void takeBack() {
    say("nothing is kept yet");
  }

  @Override
  void begin() {
    bar.requestFocusInWindow();
  }

  @Override
  void show(ChecksView view) {
    super.show(view);
    if (view.frame() == null) {
      answer.setText(" ");
      meaning.setText(" ");
      warning.setText(" ");
      return;
    }
    Estimate gives = view.frame().compliance().complianceMmPerN();
    answer.setText(
        "The frame gives "
            + Figures.withPlusMinus(gives.value(), gives.halfWidth95())
            + " mm a newton (95 %).");
    meaning.setText(
        String.format(Locale.ROOT, "%.3f mm at %.0f N.", gives.value() * USUAL_LOAD_N, USUAL_LOAD_N)
            + (gives.value() > SUSPICIOUS_MM_PER_N
                ? "  That is much: find the screw that is loose before it is calibrated in."
                : ""));
    List<String> warnings =
        view.frame().compliance().warnings().stream().map(Warning::inWords).toList();
    warning.setText(warnings.isEmpty() ? " " : String.join("; ", warnings));
  }
}
