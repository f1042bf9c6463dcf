package sagwright.screen.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
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
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.Text;

/** A blank to be written down: what it is at the left, its stations at the right, drawn below. */
final class BlankForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 6;
  private static final String ROUND = "round";
  private static final String SQUARE = "sawn square";

  private final Form form;
  private final JTextField tag;
  private final JComboBox<String> species;
  private final JComboBox<String> stage;
  private final JComboBox<String> section;
  private final JTextField length;
  private final JTextField mass;
  private final JTextField moisture;
  private final FieldGrid stations;
  private final ShaftPicture drawing =
      new ShaftPicture("blank.drawing", "Two stations or more, and the shaft is drawn here.");
  private final ShopUnits units;

  /**
   * @param ended Enter on an empty line of stations
   */
  BlankForm(ShopUnits units, Runnable ended) {
    super(new MigLayout("insets 4 0 0 0, gap 44 6", "[][grow,fill]", "[][grow,fill][]"));
    this.units = units;
    setName("blankForm");
    form = new Form("blank", this::redraw);
    tag = form.field("tag", "");
    species = form.choice("species", List.of(), true);
    stage = form.choice("stage", List.of(), true);
    section = form.choice("section", List.of(ROUND, SQUARE), false);
    length = form.field("length", units.length().symbol());
    mass = form.field("mass", units.mass().symbol());
    moisture = form.field("moisture", "%");
    stations =
        new FieldGrid(
            "stations",
            List.of("x from the tip, mm", "depth, mm", "width, mm"),
            LINES,
            ended,
            this::redraw);
    add(Text.strong("The blank"));
    add(Text.strong("Its stations: a width left out equals the depth"), "wrap");
    add(form, "aligny top");
    JScrollPane scroll = Lists.scrolled(stations);
    add(scroll, "grow, hmin 100, wrap");
    add(drawing, "span 2, growx, hmin pref");
  }

  /** Empties the form for a new blank. */
  void begin(RackView view) {
    fillChoices(view);
    tag.setEnabled(true);
    tag.setText("");
    species.setSelectedItem("");
    stage.setSelectedItem("");
    section.setSelectedItem(ROUND);
    length.setText("");
    mass.setText("");
    moisture.setText("");
    stations.fill(List.of());
    tag.requestFocusInWindow();
  }

  /** Starts from what is known of a blank; its tag stays. */
  void begin(RackView view, BlankEntry known) {
    begin(view);
    tag.setText(known.tag());
    tag.setEnabled(false);
    species.setSelectedItem(known.species());
    stage.setSelectedItem(known.stage());
    section.setSelectedItem(known.section() == SectionShape.RECTANGLE ? SQUARE : ROUND);
    length.setText(text(known.lengthMm(), units.length()));
    mass.setText(text(known.massG(), units.mass()));
    moisture.setText(text(known.moisturePercent(), Unit.PERCENT));
    List<List<String>> lines = new ArrayList<>();
    for (BlankEntry.Calipers c : known.stations()) {
      lines.add(
          List.of(
              Figures.asTyped(c.xMm()),
              Figures.asTyped(c.depthMm()),
              c.widthMm() == null ? "" : Figures.asTyped(c.widthMm())));
    }
    stations.fill(lines);
    mass.requestFocusInWindow();
  }

  private void fillChoices(RackView view) {
    species.setModel(new DefaultComboBoxModel<>(view.species().toArray(String[]::new)));
    stage.setModel(new DefaultComboBoxModel<>(view.stages().toArray(String[]::new)));
  }

  private static String text(Double value, Unit unit) {
    return value == null ? "" : Figures.asTyped(unit.fromBase(value));
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
      return null;
    }
  }

  private BlankEntry typed() throws ComplaintException {
    List<BlankEntry.Calipers> calipers = new ArrayList<>();
    for (FieldGrid.Line line : stations.typed()) {
      String at = "station " + line.number() + ", ";
      calipers.add(
          new BlankEntry.Calipers(
              Typed.quantity(at + "x", line.texts().get(0), Unit.MILLIMETRE),
              Typed.quantity(at + "depth", line.texts().get(1), Unit.MILLIMETRE),
              Typed.optional(at + "width", line.texts().get(2), Unit.MILLIMETRE)));
    }
    return new BlankEntry(
        tag.getText().trim(),
        chosen(species),
        chosen(stage).toLowerCase(Locale.ROOT),
        SQUARE.equals(section.getSelectedItem()) ? SectionShape.RECTANGLE : SectionShape.ELLIPSE,
        Typed.optional("length", length.getText(), units.length()),
        Typed.optional("mass", mass.getText(), units.mass()),
        Typed.optional("moisture", moisture.getText(), Unit.PERCENT),
        calipers);
  }

  private static String chosen(JComboBox<String> choice) {
    Object chosen = choice.isEditable() ? choice.getEditor().getItem() : choice.getSelectedItem();
    return chosen == null ? "" : chosen.toString().trim();
  }

  /** Draws what is typed as far as it makes a shaft. */
  private void redraw() {
    try {
      BlankEntry entry = typed();
      List<Station> drawn =
          entry.stations().stream()
              .map(
                  c ->
                      new Station(
                          c.xMm(), c.depthMm(), c.widthMm() == null ? c.depthMm() : c.widthMm()))
              .toList();
      if (drawn.size() < 2) {
        drawing.showWanting("Two stations or more, and the shaft is drawn here.");
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
