package sagwright.screen.rack;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
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
import sagwright.job.LikelyShaft;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.ShaftPicture;
import sagwright.screen.ShopUnits;
import sagwright.screen.Typed;
import sagwright.screen.rack.BlankEntry.Calipers;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Offering;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.Text;
import sagwright.wood.NearNames;

/**
 * A blank to be written down: what it is and how it looks at the left, its stations at the right,
 * drawn below.
 */
final class BlankForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final String ROUND = "round";
  private static final String SQUARE = "sawn square";
  private static final String WANTING = "Two stations or more, and the shaft is drawn here.";

  private final Form is;
  private final LooksFields seen;
  private final JTextField tag;
  private final JComboBox<String> species;
  private final JComboBox<String> stage;
  private final JComboBox<String> section;
  private final JTextField length;
  private final JTextField mass;
  private final JTextField moisture;
  private final StationsForm stations;
  private final ShaftPicture drawing = new ShaftPicture("blank.drawing", WANTING);
  private final ShopUnits units;
  private final transient Runnable changed;
  private final transient DoubtsAsked asked = new DoubtsAsked();
  private boolean isFilling = true;
  private List<String> woods = List.of();

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
    Offering.to(species, typed -> NearNames.first(typed, woods));
    woodEditor()
        .addFocusListener(
            new FocusAdapter() {
              @Override
              public void focusLost(FocusEvent e) {
                redraw(); // a wood's name is whole now
              }
            });
    stage = is.choice("stage", List.of(), true);
    section = is.choice("section", List.of(ROUND, SQUARE), false);
    length = is.field("length", units.length().symbol());
    mass = is.field("mass", units.mass().symbol());
    moisture = is.field("moisture", "%");
    seen = new LooksFields(units, this::redraw);
    stations = new StationsForm(this::lengthMm, ended, this::redraw);
    length.getDocument().addDocumentListener(new OnTyping(stations::pitched));
    add(Text.strong("The blank"));
    add(Text.strong("As it looks"));
    add(Text.strong("Its stations"), "wrap");
    add(is, "aligny top");
    add(seen.form(), "aligny top");
    add(stations, "grow, wrap");
    add(drawing, "span 3, growx, hmin pref");
    isFilling = false;
  }

  private Component woodEditor() {
    return species.getEditor().getEditorComponent();
  }

  /** Empties the form for a new blank; what a whole lot has alike stays. */
  void begin(RackView view) {
    isFilling = true;
    asked.begin();
    fillChoices(view);
    tag.setEnabled(true);
    tag.setText("");
    species.setSelectedItem("");
    stage.setSelectedItem("");
    section.setSelectedItem(ROUND);
    length.setText("");
    mass.setText("");
    moisture.setText("");
    seen.begin();
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
    seen.begin(known.grain());
    stations.begin(known.stations());
    isFilling = false;
    redraw();
    mass.requestFocusInWindow();
  }

  private void fillChoices(RackView view) {
    woods = view.species();
    species.setModel(new DefaultComboBoxModel<>(woods.toArray(String[]::new)));
    stage.setModel(new DefaultComboBoxModel<>(view.stages().toArray(String[]::new)));
  }

  private static String text(Double value, Unit unit) {
    return value == null ? "" : Figures.asTyped(unit.fromBase(value));
  }

  /** What of an entry can hardly be, each to be asked about; what causes another goes before it. */
  private List<Doubt> doubts(BlankEntry entry) {
    List<Doubt> doubts = new ArrayList<>(stations.doubts());
    try {
      taper(entry)
          .map(taper -> LikelyShaft.unlikelyKgM3(taper, entry.massG(), entry.stage()))
          .filter(OptionalDouble::isPresent)
          .ifPresent(unlikely -> doubts.add(Doubt.ofDensity(unlikely.getAsDouble())));
    } catch (IllegalArgumentException e) {
      // stations that make no shaft are refused, not doubted
    }
    return doubts;
  }

  /** What stands out while it is typed: a misreading, or a wood that is not known. */
  RackWords.Said hint() {
    List<Doubt> misread = stations.standingOut();
    if (!misread.isEmpty()) {
      return RackWords.misread(misread.get(0));
    }
    String wood = WoodHint.of(Form.chosen(species), woods, woodEditor().isFocusOwner());
    return wood.isEmpty() ? RackWords.FORM : new RackWords.Said(wood, WoodHint.whatFollows());
  }

  /** A refusal by the names of the fields; goes to the one that it is about. */
  String refused(String why) {
    ComplaintException complaint = new ComplaintException(FieldWords.of(why));
    focusOn(complaint.field());
    return complaint.getMessage();
  }

  private void focusOn(String field) {
    is.focusOn(field);
    seen.form().focusOn(field);
    stations.focusOn(field);
  }

  /**
   * What is typed, or null where it cannot be read or can hardly be; then the complaint says what
   * and where, or asks.
   *
   * @param complain hears one line
   */
  BlankEntry read(Consumer<String> complain) {
    try {
      BlankEntry entry = typed();
      return asked.ask(doubts(entry), complain, this::focusOn) ? null : entry;
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
        Form.chosen(species),
        Form.chosen(stage).toLowerCase(Locale.ROOT),
        SQUARE.equals(section.getSelectedItem()) ? SectionShape.RECTANGLE : SectionShape.ELLIPSE,
        Typed.optional("length", length.getText(), units.length()),
        Typed.optional("mass", mass.getText(), units.mass()),
        Typed.optional("moisture", moisture.getText(), Unit.PERCENT),
        calipers,
        seen.grain(),
        seen.why());
  }

  private double lengthMm() {
    try {
      Double typed = Typed.optional("length", length.getText(), units.length());
      return typed == null ? Double.NaN : typed;
    } catch (ComplaintException e) {
      return Double.NaN;
    }
  }

  /** Draws what is typed as far as it makes a shaft. */
  private void redraw() {
    if (isFilling) {
      return;
    }
    changed.run();
    try {
      Optional<Taper> taper = taper(typed());
      if (taper.isPresent()) {
        drawing.show(FinishDrawing.Scene.of(taper.get()));
      } else {
        drawing.showWanting(WANTING);
      }
    } catch (ComplaintException | IllegalArgumentException e) {
      drawing.showWanting(e.getMessage());
    }
  }

  /**
   * Empty for fewer than two stations.
   *
   * @throws IllegalArgumentException where the stations make no shaft
   */
  private static Optional<Taper> taper(BlankEntry entry) {
    List<Station> stations = entry.stations().stream().map(StationsForm::station).toList();
    if (stations.size() < 2) {
      return Optional.empty();
    }
    double endMm = stations.get(stations.size() - 1).xMm();
    double lengthMm = entry.lengthMm() == null ? endMm : entry.lengthMm();
    return Optional.of(new Taper(entry.section(), stations, lengthMm));
  }
}
