package sagwright.screen.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.check.CalibrationPoint;
import sagwright.check.CalibrationPoint.Direction;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.job.Signature;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;
import sagwright.screen.theme.Keys;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.OnTyping;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;
import sagwright.screen.theme.Text;

/** Load by masses, or gauge by blocks: point after point, up and down, with its line. */
final class LineCard extends SignedCard {
  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final transient ChecksActions actions;
  private final JLabel step = Text.label("", 20, true);
  private final JTextField known;
  private final JTextField reading;
  private final LiveFigure live;
  private final RowTable<Row> table;
  private final CalibrationPicture picture;
  private final TermsPicture terms;
  private final GravityFields gravity;
  private String untouched = "";
  private boolean isInView;
  private transient ChecksView.Line shown = ChecksView.Line.NONE;

  /** A point in the table. */
  private record Row(int number, CalibrationPoint taken, double offLine) {}

  LineCard(Kind kind, ChecksActions actions, Speech speech) {
    super(
        name(kind),
        kind == Kind.LOAD ? "Load" : "Gauge",
        speech,
        new MigLayout(
            "insets 0 0 8 0, gap 30 8, hidemode 3",
            "[39%,fill][grow,fill]",
            "[][][][grow,fill][]"));
    this.kind = kind;
    this.actions = actions;
    boolean isLoad = kind == Kind.LOAD;
    known =
        Fields.figures(name(kind) + ".known", isLoad ? "mass on the hook in g" : "block in mm", 7);
    reading = Fields.figures(name(kind) + ".reading", isLoad ? "counts" : "steps", 8);
    live = new LiveFigure(name(kind) + ".live", isLoad);
    table = new RowTable<>(name(kind) + ".points", columns(isLoad));
    picture = new CalibrationPicture(name(kind) + ".plot", isLoad);
    terms = new TermsPicture(name(kind) + ".terms", isLoad);
    gravity = isLoad ? new GravityFields(actions, this::say) : null;
    build(isLoad);
    known.getDocument().addDocumentListener(new OnTyping(this::apply));
    enterTakes(known);
    enterTakes(reading);
  }

  private static String name(Kind kind) {
    return kind == Kind.LOAD ? "load" : "gauge";
  }

  private void build(boolean isLoad) {
    add(step, "span 2, wrap");
    JPanel entry = new JPanel(new MigLayout("insets 0, gap 8 0, fillx", "[]8[grow]18[]8[grow]"));
    entry.add(Text.plain(isLoad ? "mass, g" : "block, mm"));
    entry.add(known, "growx, hmin 44");
    entry.add(Text.plain(isLoad ? "counts" : "steps"));
    entry.add(reading, "growx, hmin 44");
    reading.putClientProperty("JTextField.placeholderText", "from the head");
    add(entry, "growx");
    add(picture, "spany 3, grow, hmin 200, wrap");
    add(live, "growx, hmin pref, wrap");
    JPanel list = new JPanel(new MigLayout("insets 0, gap 0 4", "[grow,fill]", "[grow,fill][]"));
    list.add(Lists.scrolled(table), "grow, hmin 60, wrap");
    JPanel doings = new JPanel(new MigLayout("insets 0, gap 14 0"));
    doings.add(
        new QuietButton(
            name(kind) + ".takeBack",
            "take the last back",
            "Ctrl Z",
            () -> actions.takeBack(kind)));
    doings.add(
        new QuietButton(
            name(kind) + ".anew", "begin anew", "Ctrl N", () -> actions.beginAnew(kind)));
    list.add(doings);
    add(list, "spany 2, grow, hmin 100");
    add(terms, "newline, skip 1, growx, hmin pref, wrap");
    JPanel foot = new JPanel(new MigLayout("insets 0, gap 0 0, fillx", "[][grow,right]"));
    if (gravity != null) {
      foot.add(gravity);
    } else {
      foot.add(Text.second("Lower the stem onto a block: never let it drop."));
    }
    foot.add(sign());
    add(foot, "span 2, growx");
  }

  private static List<Column<Row>> columns(boolean isLoad) {
    return List.of(
        Column.words("", 44, r -> String.valueOf(r.number())),
        Column.words("", 70, r -> r.taken().direction() == Direction.UP ? "up" : "down"),
        Column.figures(isLoad ? "g" : "mm", 100, isLoad ? 0 : 3, r -> r.taken().applied()),
        Column.figures(isLoad ? "counts" : "steps", 120, 0, r -> r.taken().reading()),
        Column.figures(isLoad ? "off, mN" : "off, µm", 90, 1, Row::offLine));
  }

  /** Enter takes the point; so does Space, from a foot pedal, where a number is typed. */
  private void enterTakes(JTextField field) {
    for (var listener : field.getActionListeners()) {
      field.removeActionListener(listener);
    }
    field.addActionListener(e -> take());
    Keys.bind(field, KeyStroke.getKeyStroke(' '), "take", this::take);
  }

  /** What is typed hangs on a practice bench, for somebody must hang it. */
  private void apply() {
    if (!isInView) {
      return;
    }
    try {
      actions.apply(kind, Math.max(0, Typed.quantity("", known.getText(), unit())));
    } catch (ComplaintException e) {
      actions.apply(kind, 0); // nothing, or half a number
    }
  }

  private Unit unit() {
    return kind == Kind.LOAD ? Unit.GRAM : Unit.MILLIMETRE;
  }

  private void take() {
    boolean isLoad = kind == Kind.LOAD;
    try {
      double applied = Typed.quantity(isLoad ? "mass" : "block", known.getText(), unit());
      untouched = known.getText();
      Double typed = Numbers.optional(isLoad ? "counts" : "steps", reading.getText());
      actions.take(
          kind,
          applied,
          typed,
          then(
              () -> {
                say("");
                reading.setText("");
                known.requestFocusInWindow();
                known.selectAll();
              }));
    } catch (ComplaintException e) {
      say(e.getMessage());
    }
  }

  @Override
  String details() {
    return kind == Kind.LOAD ? "by known masses, up and down" : "by gauge blocks, up and down";
  }

  @Override
  String foot() {
    return kind == Kind.LOAD
        ? "Weights fall: feet clear, hang them low, over sand."
        : "Enter takes the point when the steps stand still.";
  }

  @Override
  String keys() {
    String unit = kind == Kind.LOAD ? "2kg" : "1in";
    return "Enter or Space takes the point.  A unit stands close to its number: "
        + unit
        + ".  Esc goes back; the points stay.";
  }

  @Override
  void focusOn(String field) {
    super.focusOn(field);
    if (gravity != null) {
      gravity.focusOn(field);
    }
  }

  @Override
  void keep(Signature signature) {
    if (gravity != null) {
      gravity.takeTyped();
    }
    String what = kind == Kind.LOAD ? "The load" : "The gauge";
    actions.keepLine(kind, signature, doneSaying(what + " is calibrated.  Ctrl Z takes it back."));
  }

  @Override
  void takeBack() {
    actions.takeBack(kind);
  }

  void beginAnew() {
    actions.beginAnew(kind);
  }

  @Override
  void begin() {
    isInView = true;
    apply();
    known.requestFocusInWindow();
  }

  @Override
  void leave() {
    isInView = false;
    actions.apply(kind, 0);
  }

  @Override
  void show(ChecksView view) {
    ChecksView.Line next = kind == Kind.LOAD ? view.load() : view.gauge();
    super.show(view);
    if (gravity != null) {
      gravity.show(view.gravity());
    }
    boolean same = next.taken().equals(shown.taken());
    shown = next;
    step.setText(Words.step(kind, next.taken()));
    picture.show(next);
    terms.show(next.line());
    if (same && table.getRowCount() > 0) {
      return;
    }
    List<Row> rows = new ArrayList<>();
    for (int i = next.points().size() - 1; i >= 0; i--) { // newest on top
      double off = next.line() == null ? Double.NaN : 1000 * next.line().residuals()[i];
      rows.add(new Row(i + 1, next.taken().taken().get(i), off));
    }
    table.show(rows, Row::number);
    table.move(-rows.size());
    propose(next.taken().proposal());
  }

  /** Puts down what likely comes next, unless something else is being typed already. */
  private void propose(OptionalDouble proposal) {
    if (known.getText().equals(untouched)) {
      untouched = proposal.isPresent() ? Figures.asTyped(proposal.getAsDouble()) : "";
      known.setText(untouched);
      known.selectAll();
    }
  }

  @Override
  void live(ChecksActions.Live now) {
    live.show(now, kind == Kind.LOAD ? now.counts().load() : now.counts().gauge());
  }
}
