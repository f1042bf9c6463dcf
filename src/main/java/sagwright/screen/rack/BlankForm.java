package sagwright.screen.rack;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.drawing.FinishDrawing;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShaftPicture;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.WoodWords;
import sagwright.screen.rack.BlankEntry.Calipers;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.Text;
import sagwright.wood.Grain;

/**
 * A blank to be written down: what it is and how it looks at the left, its stations at the right,
 * drawn below.
 */
final class BlankForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final String ROUND = "round";
  private static final String SQUARE = "sawn square";
  private static final String WANTING = "Two stations or more, and the shaft is drawn here.";
  private static final List<String> REASONS =
      List.of("", "turned", "weighed", "measured again", "misread before");

  private final Form is;
  private final Form seen;
  private final JTextField tag;
  private final JComboBox<String> species;
  private final JComboBox<String> stage;
  private final JComboBox<String> section;
  private final JTextField length;
  private final JTextField mass;
  private final JTextField moisture;
  private final JTextField lines;
  private final JComboBox<String> runOut;
  private final JTextField looks;
  private final JComboBox<String> why;
  private final StationsForm stations;
  private final ShaftPicture drawing = new ShaftPicture("blank.drawing", WANTING);
  private final ShopUnits units;
  private final transient Runnable changed;
  private boolean isFilling = true;

  /**
   * @param ended Enter on an empty line of stations, or behind the last
   * @param changed something else is typed
   */
  BlankForm(ShopUnits units, Runnable ended, Runnable changed) {
    super(new MigLayout("insets 4 0 0 0, gap 24 6", "[][][grow,fill]", "[][grow,fill][]"));
    this.units = units;
    this.changed = changed;
    setName("blankForm");
    is = new Form("blank", this::redraw);
    tag = is.field("tag", "");
    species = is.choice("species", List.of(), true);
    stage = is.choice("stage", List.of(), true);
    section = is.choice("section", List.of(ROUND, SQUARE), false);
    length = is.field("length", units.length().symbol());
    mass = is.field("mass", units.mass().symbol());
    moisture = is.field("moisture", "%");
    seen = new Form("blank", this::redraw);
    lines = seen.field("grain lines", WoodWords.per(units));
    runOut = seen.choice("run-out", runOuts(), false);
    looks = seen.field("looks", "");
    why = seen.choice("why anew", REASONS, true);
    stations = new StationsForm(this::lengthMm, ended, this::redraw);
    length.getDocument().addDocumentListener(new OnTyping(stations::pitched));
    add(Text.strong("The blank"));
    add(Text.strong("As it looks"));
    add(Text.strong("Its stations"), "wrap");
    add(is, "aligny top");
    add(seen, "aligny top");
    add(stations, "grow, wrap");
    add(drawing, "span 3, growx, hmin pref");
    isFilling = false;
  }

  private static List<String> runOuts() {
    return Arrays.asList("", "straight", "slight run-out", "runs out");
  }

  /** Empties the form for a new blank; what a whole lot has alike stays. */
  void begin(RackView view) {
    isFilling = true;
    fillChoices(view);
    tag.setEnabled(true);
    tag.setText("");
    species.setSelectedItem("");
    stage.setSelectedItem("");
    section.setSelectedItem(ROUND);
    length.setText("");
    mass.setText("");
    moisture.setText("");
    fill(Grain.UNSEEN);
    why.setSelectedItem("");
    why.setEnabled(false);
    stations.begin();
    isFilling = false;
    redraw();
    tag.requestFocusInWindow();
  }

  /** Starts from what is known of a blank; its tag stays. */
  void begin(RackView view, BlankEntry known) {
    begin(view);
    isFilling = true;
    tag.setText(known.tag());
    tag.setEnabled(false);
    species.setSelectedItem(known.species());
    stage.setSelectedItem(known.stage());
    section.setSelectedItem(known.section() == SectionShape.RECTANGLE ? SQUARE : ROUND);
    length.setText(text(known.lengthMm(), units.length()));
    mass.setText(text(known.massG(), units.mass()));
    moisture.setText(text(known.moisturePercent(), Unit.PERCENT));
    fill(known.grain());
    why.setEnabled(true);
    stations.begin(known.stations());
    isFilling = false;
    redraw();
    mass.requestFocusInWindow();
  }

  private void fill(Grain grain) {
    Double shown = WoodWords.lines(grain, units);
    lines.setText(shown == null ? "" : Figures.asTyped(shown));
    runOut.setSelectedItem(grain.runOut() == null ? "" : grain.runOut().inWords());
    looks.setText(grain.looks() == null ? "" : grain.looks());
  }

  private void fillChoices(RackView view) {
    species.setModel(new DefaultComboBoxModel<>(view.species().toArray(String[]::new)));
    stage.setModel(new DefaultComboBoxModel<>(view.stages().toArray(String[]::new)));
  }

  private static String text(Double value, Unit unit) {
    return value == null ? "" : Figures.asTyped(unit.fromBase(value));
  }

  /** The readings that stand out from a fair taper, one line; empty for none. */
  String standsOut() {
    return stations.standsOut();
  }

  /** A refusal by the names of the fields; goes to the one that it is about. */
  String refused(String why) {
    ComplaintException complaint = new ComplaintException(FieldWords.of(why));
    focusOn(complaint.field());
    return complaint.getMessage();
  }

  private void focusOn(String field) {
    is.focusOn(field);
    seen.focusOn(field);
    stations.focusOn(field);
  }

  /**
   * What is typed, or null where it cannot be read; then the complaint says what and where.
   *
   * @param complain hears one line
   */
  BlankEntry read(Consumer<String> complain) {
    try {
      return typed();
    } catch (ComplaintException e) {
      complain.accept(e.getMessage());
      focusOn(e.field());
      return null;
    }
  }

  private BlankEntry typed() throws ComplaintException {
    List<Calipers> calipers = stations.read();
    return new BlankEntry(
        tag.getText().trim(),
        chosen(species),
        chosen(stage).toLowerCase(Locale.ROOT),
        SQUARE.equals(section.getSelectedItem()) ? SectionShape.RECTANGLE : SectionShape.ELLIPSE,
        Typed.optional("length", length.getText(), units.length()),
        Typed.optional("mass", mass.getText(), units.mass()),
        Typed.optional("moisture", moisture.getText(), Unit.PERCENT),
        calipers,
        grain(),
        chosen(why));
  }

  private Grain grain() throws ComplaintException {
    Double counted =
        lines.getText().isBlank() ? null : Typed.number("grain lines", lines.getText());
    if (counted != null && !(counted > 0)) {
      throw new ComplaintException("grain lines: must be above 0, not " + lines.getText());
    }
    int chosenRunOut = runOut.getSelectedIndex();
    return new Grain(
        WoodWords.linesPerCm(counted, units),
        chosenRunOut <= 0 ? null : Grain.RunOut.values()[chosenRunOut - 1],
        looks.getText().isBlank() ? null : looks.getText().trim());
  }

  private double lengthMm() {
    try {
      Double typed = Typed.optional("length", length.getText(), units.length());
      return typed == null ? Double.NaN : typed;
    } catch (ComplaintException e) {
      return Double.NaN;
    }
  }

  private static String chosen(JComboBox<String> choice) {
    Object chosen = choice.isEditable() ? choice.getEditor().getItem() : choice.getSelectedItem();
    return chosen == null ? "" : chosen.toString().trim();
  }

  /** Draws what is typed as far as it makes a shaft. */
  private void redraw() {
    if (isFilling) {
      return;
    }
    changed.run();
    try {
      BlankEntry entry = typed();
      List<Station> drawn = entry.stations().stream().map(StationsForm::station).toList();
      if (drawn.size() < 2) {
        drawing.showWanting(WANTING);
        return;
      }
      double end = drawn.get(drawn.size() - 1).xMm();
      double lengthMm = entry.lengthMm() == null ? end : entry.lengthMm();
      drawing.show(FinishDrawing.Scene.of(new Taper(entry.section(), drawn, lengthMm)));
    } catch (ComplaintException | IllegalArgumentException e) {
      drawing.showWanting(e.getMessage());
    }
  }
}
