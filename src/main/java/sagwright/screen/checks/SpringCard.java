package sagwright.screen.checks;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import net.miginfocom.swing.MigLayout;
import sagwright.check.GaugeSpring;
import sagwright.check.LocalGravity;
import sagwright.check.PoorPointsException;
import sagwright.job.Signature;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.Text;

/** The gauge's spring: the stem pushed onto a letter balance, at two travels or more. */
final class SpringCard extends SignedCard {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 4;

  private final transient ChecksActions actions;
  private final FieldGrid pushes =
      new FieldGrid(
          "spring.pushes", List.of("travel, mm", "balance, g"), LINES, this::press, this::work);
  private final JLabel answer = Text.label(" ", 24, true);
  private transient LocalGravity gravity = LocalGravity.STANDARD_CGPM_1901;

  SpringCard(ChecksActions actions, Speech speech) {
    super(
        "spring",
        "Gauge's spring",
        speech,
        new MigLayout("insets 0 0 8 0, gap 0 10", "[50%,fill]", "[][][grow,fill][][]"));
    this.actions = actions;
    add(Text.label("Hold the gauge over a letter balance, its stem on the pan.", 20, true), "wrap");
    add(
        Text.plain(
            "Lower it to two travels or more; each time note the gauge and what the balance"
                + " shows."),
        "wrap");
    add(Lists.scrolled(pushes), "grow, hmin 100, wrap");
    add(answer, "wrap");
    add(sign(), "growx 0");
  }

  private List<GaugeSpring.Push> read() throws ComplaintException {
    List<GaugeSpring.Push> read = new ArrayList<>();
    for (FieldGrid.Line line : pushes.typed()) {
      String at = "line " + line.number() + ", ";
      read.add(
          new GaugeSpring.Push(
              Typed.quantity(at + "travel", line.texts().get(0), Unit.MILLIMETRE),
              Typed.quantity(at + "balance", line.texts().get(1), Unit.GRAM)));
    }
    return read;
  }

  /** Shows the spring as far as what is typed makes one. */
  private void work() {
    try {
      double spring = GaugeSpring.of(read(), gravity).springNPerMm();
      answer.setText("It pushes back with " + Figures.rounded(spring, 4) + " N a millimetre.");
    } catch (ComplaintException | PoorPointsException e) {
      answer.setText(" ");
    }
  }

  @Override
  String details() {
    return "it carries its share of the load";
  }

  @Override
  String foot() {
    return "The stem is pushed by hand: keep within its travel.";
  }

  @Override
  String keys() {
    return "Enter goes on.  Enter on an empty line, or Ctrl Enter, keeps it.  Esc goes back.";
  }

  @Override
  void focusOn(String field) {
    super.focusOn(field);
    pushes.focusOn(field);
  }

  @Override
  void keep(Signature signature) throws ComplaintException {
    actions.keepSpring(read(), signature, doneSaying("The spring is kept.  Ctrl Z takes it back."));
  }

  @Override
  void takeBack() {
    say("empty a line's fields to take it out");
  }

  @Override
  void begin() {
    pushes.fill(List.of());
    pushes.focusFirst();
  }

  @Override
  void show(ChecksView view) {
    super.show(view);
    gravity = view.gravity().orElse(LocalGravity.STANDARD_CGPM_1901);
  }
}
