package sagwright.screen.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.FairTaper;
import sagwright.beam.Station;
import sagwright.job.LikelyShaft;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.rack.BlankEntry.Calipers;
import sagwright.screen.theme.FieldGrid;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.Text;

/**
 * The stations of a blank. At a fixed pitch the program says where each lies, and only diameters
 * are typed, by hand or by a caliper that types like a keyboard: a figure, perhaps with a comma or
 * its unit, and Enter.
 */
final class StationsForm extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int LINES = 6;

  /** No shaft is a metre thick: 12,345 of a caliper can mean but one thing. */
  private static final Pattern THREE_DECIMALS = Pattern.compile("(\\d{1,3}),(\\d{3})(?!\\d)");

  private final JTextField pitch = new JTextField(5);
  private final JCheckBox widthToo = new JCheckBox("width too");
  private final FieldGrid grid;
  private final transient DoubleSupplier lengthMm;

  /**
   * @param lengthMm of the blank as far as it is typed; NaN where it is not
   * @param ended Enter on an empty line, or behind the last station
   */
  StationsForm(DoubleSupplier lengthMm, Runnable ended, Runnable changed) {
    super(new MigLayout("insets 0, gap 8 4", "[][grow,fill]", "[][][grow,fill]"));
    this.lengthMm = lengthMm;
    setName("stationsForm");
    grid =
        new FieldGrid(
            "stations",
            List.of("x from the tip, mm", "depth, mm", "width, mm"),
            LINES,
            ended,
            changed);
    pitch.setName("blank.pitch");
    pitch.putClientProperty(
        AccessibleContext.ACCESSIBLE_NAME_PROPERTY, "a station every so many mm from the tip");
    pitch.getDocument().addDocumentListener(new OnTyping(this::pitchTyped));
    pitch.addActionListener(e -> grid.focusFirst());
    widthToo.setName("blank.width too");
    widthToo.setSelected(true);
    widthToo.addActionListener(e -> widths());
    JPanel places = new JPanel(new MigLayout("insets 0, gap 8 0"));
    places.add(Text.plain("a station every"));
    places.add(pitch, "hmin 44");
    places.add(Text.plain("mm"), "gapright 24");
    places.add(widthToo, "hmin 44");
    add(places, "span 2, wrap");
    add(
        Text.note("Left empty, x is typed too. A width left out equals the depth."),
        "span 2, wrap");
    add(Lists.scrolled(grid), "span 2, grow, hmin 100");
  }

  /** At a pitch one diameter a station is usual; who reads both says so. */
  private void pitchTyped() {
    widthToo.setSelected(Double.isNaN(pitchMm()));
    widths();
    pitched();
  }

  private void widths() {
    grid.enterPassesFrom(widthToo.isSelected() ? 3 : 2);
  }

  /** Empties it; whether widths are typed, and at what pitch, stays as it was last. */
  void begin() {
    grid.fill(List.of());
    pitched();
  }

  /** Starts from stations that are known: they lie where they lay. */
  void begin(List<Calipers> known) {
    pitch.setText("");
    grid.fill(
        known.stream()
            .map(
                c ->
                    List.of(
                        Figures.asTyped(c.xMm()),
                        Figures.asTyped(c.depthMm()),
                        c.widthMm() == null ? "" : Figures.asTyped(c.widthMm())))
            .toList());
  }

  /** The length has changed, or the pitch: the stations lie elsewhere. */
  void pitched() {
    double every = pitchMm();
    grid.giveFirstColumn(Double.isNaN(every) ? null : line -> placeOf(line, every));
  }

  private double pitchMm() {
    try {
      Double every = Typed.optional("pitch", pitch.getText(), Unit.MILLIMETRE);
      return every == null || !(every > 0) ? Double.NaN : every;
    } catch (ComplaintException e) {
      return Double.NaN;
    }
  }

  /** The last station lies at the butt end, where the length is known. */
  private String placeOf(int line, double everyMm) {
    double endMm = lengthMm.getAsDouble();
    double xMm = line * everyMm;
    if (xMm < endMm || Double.isNaN(endMm)) {
      return Figures.asTyped(xMm);
    }
    return xMm - everyMm < endMm ? Figures.asTyped(endMm) : null;
  }

  /** What is typed, x rising or not. */
  List<Calipers> read() throws ComplaintException {
    List<Calipers> calipers = new ArrayList<>();
    for (FieldGrid.Line line : grid.typed()) {
      String at = "station " + line.number() + ", ";
      calipers.add(
          new Calipers(
              Typed.quantity(at + "x", line.texts().get(0), Unit.MILLIMETRE),
              Typed.quantity(at + "depth", diameter(line.texts().get(1)), Unit.MILLIMETRE),
              Typed.optional(at + "width", diameter(line.texts().get(2)), Unit.MILLIMETRE)));
    }
    return calipers;
  }

  /** Goes to the field that a complaint is about, as "station 3, depth" or all "stations". */
  void focusOn(String field) {
    if (field.equals("stations")) {
      grid.focusFirst();
    } else {
      grid.focusOn(field);
    }
  }

  private static String diameter(String typed) {
    return THREE_DECIMALS.matcher(typed).replaceFirst("$1.$2");
  }

  /** Readings that no shaft has, then those that stand out from a fair taper. */
  List<Doubt> doubts() {
    List<Doubt> doubts = new ArrayList<>();
    try {
      List<Calipers> calipers = read();
      List<Integer> lines = grid.typed().stream().map(FieldGrid.Line::number).toList();
      doubts.addAll(unlikely(calipers, lines));
    } catch (ComplaintException e) {
      // what cannot be read is complained of, not doubted
    }
    doubts.addAll(standingOut());
    return doubts;
  }

  private static List<Doubt> unlikely(List<Calipers> calipers, List<Integer> lines) {
    List<Doubt> doubts = new ArrayList<>();
    for (int i = 0; i < calipers.size(); i++) {
      Calipers c = calipers.get(i);
      if (!LikelyShaft.isLikelyMm(c.depthMm())) {
        doubts.add(unlikely("depth", c.depthMm(), c, lines.get(i)));
      }
      if (c.widthMm() != null && !LikelyShaft.isLikelyMm(c.widthMm())) {
        doubts.add(unlikely("width", c.widthMm(), c, lines.get(i)));
      }
    }
    return doubts;
  }

  private static Doubt unlikely(String what, double mm, Calipers at, int line) {
    return Doubt.ofDiameter(what, mm, Figures.asTyped(at.xMm()) + " mm", field(line, what));
  }

  private static String field(int line, String what) {
    return "station " + line + ", " + what;
  }

  /** What stands out from a fair taper, all in one: it is looked at as a whole. */
  List<Doubt> standingOut() {
    try {
      return standingOut(read());
    } catch (ComplaintException e) {
      return List.of(); // what cannot be read is complained of, not doubted
    }
  }

  private List<Doubt> standingOut(List<Calipers> calipers) {
    List<Station> stations = calipers.stream().map(StationsForm::station).toList();
    for (int i = 1; i < stations.size(); i++) {
      if (stations.get(i).xMm() <= stations.get(i - 1).xMm()) {
        return List.of();
      }
    }
    List<FairTaper.StandingOut> out = FairTaper.standingOut(stations);
    if (out.isEmpty()) {
      return List.of();
    }
    String words =
        out.stream()
            .map(each -> inWords(each, stations.get(each.station())))
            .collect(Collectors.joining("; "));
    FairTaper.StandingOut first = out.get(0);
    int line = grid.typed().get(first.station()).number();
    return List.of(new Doubt(words, field(line, first.isWidth() ? "width" : "depth")));
  }

  static Station station(Calipers c) {
    return new Station(c.xMm(), c.depthMm(), c.widthMm() == null ? c.depthMm() : c.widthMm());
  }

  private static String inWords(FairTaper.StandingOut out, Station station) {
    return String.format(
        "%s %s at %s mm lies %s mm %s a fair taper",
        out.isWidth() ? "width" : "depth",
        Figures.asTyped(out.readMm()),
        Figures.asTyped(station.xMm()),
        Figures.rounded(Math.abs(out.offMm()), 2),
        out.offMm() > 0 ? "over" : "under");
  }
}
