package sagwright.screen.checks;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sagwright.job.DueCheck;
import sagwright.job.DueCheck.Subject;
import sagwright.job.DueCheck.Urgency;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;

/** What is due and what is out, on top; under it the check rod's chart and how the line does. */
final class DueCard extends CheckCard {
  private static final long serialVersionUID = 1L;

  private final transient ChecksActions actions;
  private final transient Consumer<Subject> open;
  private final RowTable<DueCheck> table = new RowTable<>("checks.due", columns());
  private final RodPicture rod = new RodPicture("checks.rod");
  private final HealthPicture health = new HealthPicture("checks.health", false);
  private transient ChecksView view;

  /**
   * @param open goes to the card of one of them
   */
  DueCard(ChecksActions actions, Consumer<Subject> open, List<QuietButton> ways, Speech speech) {
    super(
        "checks.overview",
        "Checks",
        speech,
        new MigLayout("insets 0 0 4 0, gap 30 0", "[58%,fill][grow,fill]", "[][]14[grow,fill]6[]"));
    this.actions = actions;
    this.open = open;
    add(table.getTableHeader(), "span 2, growx, wrap");
    add(table, "span 2, growx, hmin pref, wrap");
    add(rod, "grow, hmin 160");
    add(health, "grow, hmin 160, wrap");
    JPanel row = new JPanel(new MigLayout("insets 0, gap 14 0"));
    ways.forEach(row::add);
    add(row, "span 2");
    table.whenOpened(due -> open.accept(due.subject()));
  }

  private static List<Column<DueCheck>> columns() {
    return List.of(
        Column.words("", 172, due -> due.subject().inWords()),
        Column.words("", 92, due -> due.urgency().inWords()),
        Column.words("how it stands", 500, DueCheck::standing),
        Column.words("next", 348, DueCard::next));
  }

  /** What is long stands under the list. */
  private static String next(DueCheck due) {
    boolean isLong = due.subject() == Subject.ROD && due.urgency() == Urgency.OUT;
    return isLong ? "what to look at stands below" : due.next();
  }

  @Override
  String details() {
    if (view == null) {
      return "";
    }
    String counts =
        Stream.of(Urgency.OUT, Urgency.DUE, Urgency.SOON)
            .filter(urgency -> count(urgency) > 0)
            .map(urgency -> count(urgency) + " " + urgency.inWords())
            .collect(Collectors.joining(", "));
    return counts.isEmpty() ? "nothing is due, nothing is out" : counts;
  }

  private long count(Urgency urgency) {
    return view.due().stream().filter(d -> d.urgency() == urgency).count();
  }

  @Override
  String foot() {
    if (count(Urgency.OUT) > 0) {
      return "The bench is out: measure nothing for anyone until it is in again.";
    }
    boolean calibrates =
        view.due().stream().anyMatch(d -> d.urgency() == Urgency.DUE && d.subject() != Subject.ROD);
    return calibrates
        ? "First what is due here, then the rod, then shafts."
        : "The rod first, before the first shaft of the day.";
  }

  @Override
  String keys() {
    String undo = view.undoable().isEmpty() ? "" : "  Ctrl Z takes back: " + view.undoable() + ".";
    return "Enter opens what is marked." + undo;
  }

  @Override
  String control() {
    return view.rod().hasRod() ? "Test the rod" : "Enter a rod";
  }

  @Override
  String controlKey() {
    return "T";
  }

  @Override
  void press() {
    if (view.rod().hasRod()) {
      actions.layRod();
    } else {
      open.accept(Subject.ROD);
    }
  }

  @Override
  void takeBack() {
    actions.undo(then(() -> say("Taken back.")));
  }

  @Override
  void begin() {
    table.requestFocusInWindow();
  }

  @Override
  void show(ChecksView next) {
    view = next;
    table.show(next.due(), DueCheck::subject);
    rod.show(next.rod());
    health.show(next.health());
  }
}
