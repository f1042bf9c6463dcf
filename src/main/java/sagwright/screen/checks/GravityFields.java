package sagwright.screen.checks;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.check.LocalGravity;
import sagwright.quantity.Figures;
import sagwright.screen.ComplaintException;
import sagwright.screen.Reply;
import sagwright.screen.theme.Leaving;
import sagwright.screen.theme.Text;

/** What a kilogram weighs here: g as known, or from latitude and height. */
final class GravityFields extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient ChecksActions actions;
  private final transient Consumer<String> say;
  private final JTextField g = Fields.figures("load.g", "gravity in metres per second squared", 7);
  private final JTextField latitude = Fields.figures("load.latitude", "latitude in degrees", 5);
  private final JTextField height = Fields.figures("load.height", "height above the sea in m", 5);

  GravityFields(ChecksActions actions, Consumer<String> say) {
    super(new MigLayout("insets 0, gap 8 0", "[]8[]8[]8[]8[]14[]8[]8[]"));
    this.actions = actions;
    this.say = say;
    add(Text.plain("gravity"));
    add(g, "hmin 44");
    add(Text.second("m/s², or latitude"));
    add(latitude, "hmin 44");
    add(Text.second("°"));
    add(Text.second("height"));
    add(height, "hmin 44");
    add(Text.second("m"));
    Leaving.keeps(g, () -> set(g, this::asKnown));
    Leaving.keeps(latitude, () -> set(latitude, this::fromPlace));
    Leaving.keeps(height, () -> set(height, this::fromPlace));
  }

  private interface Source {
    LocalGravity gravity() throws ComplaintException;
  }

  private LocalGravity asKnown() throws ComplaintException {
    return new LocalGravity(Numbers.number("gravity", g.getText()));
  }

  /** What stands in the field that the focus is in counts as well. */
  void takeTyped() {
    if (g.isFocusOwner()) {
      set(g, this::asKnown);
    } else if (latitude.isFocusOwner() || height.isFocusOwner()) {
      set(latitude, this::fromPlace);
    }
  }

  /** Goes to the field that a complaint is about. */
  void focusOn(String field) {
    if (field.equals("gravity")) {
      g.requestFocusInWindow();
    }
  }

  private LocalGravity fromPlace() throws ComplaintException {
    Double aboveSea = Numbers.optional("height", height.getText());
    double degrees = Numbers.number("latitude", latitude.getText());
    return LocalGravity.at(new LocalGravity.Place(degrees, aboveSea == null ? 0 : aboveSea));
  }

  private void set(JTextField field, Source source) {
    if (field.getText().isBlank()) {
      return;
    }
    try {
      actions.setGravity(source.gravity(), Reply.onEventThread(() -> say.accept(""), say));
    } catch (ComplaintException | IllegalArgumentException e) {
      say.accept(e.getMessage());
      field.requestFocusInWindow();
    }
  }

  void show(Optional<LocalGravity> here) {
    if (here.isPresent() && !g.isFocusOwner()) {
      g.setText(Figures.rounded(here.get().metresPerSecondSquared(), 5));
    }
  }
}
