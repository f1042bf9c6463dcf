package sagwright.screen.orders;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.beam.Taper;
import sagwright.job.KeepTapers.KeptTaper;
import sagwright.screen.Reply;
import sagwright.screen.theme.Form;
import sagwright.screen.theme.Keys;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.RowTable;
import sagwright.screen.theme.RowTable.Column;
import sagwright.screen.theme.Text;

/**
 * The tapers that the shop keeps. A name and Enter keep the one that is typed, or rename the one
 * that was picked by R; Delete deletes, Enter uses it.
 */
final class TaperFields extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final String KEEP = "keep this taper as";

  private final transient OrdersActions actions;
  private final transient Consumer<String> say;
  private final JTextField name;
  private final RowTable<KeptTaper> table =
      new RowTable<>(
          "tapers",
          List.of(
              Column.words("taper", 150, KeptTaper::name),
              Column.figures("length, mm", 90, 1, t -> t.taper().lengthMm()),
              Column.figures("tip, mm", 80, 2, t -> t.taper().depthAt(0)),
              Column.figures("butt, mm", 80, 2, t -> t.taper().depthAt(t.taper().lengthMm())),
              Column.figures("knots", 70, 0, t -> (double) t.taper().stationCount())));
  private final JLabel note = Text.note("");
  private transient Taper typed;
  private transient KeptTaper renaming;

  /**
   * @param use a kept taper was chosen
   * @param say one line for people
   */
  TaperFields(OrdersActions actions, Consumer<Taper> use, Consumer<String> say) {
    super(new MigLayout("insets 0, gap 0 4, wrap", "[grow,fill]", "[][][grow,fill]"));
    this.actions = actions;
    this.say = say;
    Form form = new Form("taper", () -> {}, 0);
    name = form.field(KEEP, "");
    name.addActionListener(e -> keep());
    table.whenOpened(kept -> use.accept(kept.taper()));
    key(KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, 0), () -> onSelected(this::delete));
    // as it is typed, or the letter would follow the focus into the name
    key(KeyStroke.getKeyStroke('r'), () -> onSelected(this::rename));
    key(KeyStroke.getKeyStroke('R'), () -> onSelected(this::rename));
    add(form);
    add(note, "wmin 0");
    for (int page : new int[] {KeyEvent.VK_PAGE_UP, KeyEvent.VK_PAGE_DOWN}) { // they turn the leaf
      table
          .getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
          .put(KeyStroke.getKeyStroke(page, 0), "none");
    }
    add(Lists.scrolled(table), "hmin 60, grow");
  }

  private void onSelected(Consumer<KeptTaper> run) {
    KeptTaper selected = table.selected();
    if (selected != null) {
      run.accept(selected);
    }
  }

  private void key(KeyStroke stroke, Runnable run) {
    Keys.bind(table, stroke, stroke.toString(), run);
  }

  void show(List<KeptTaper> tapers) {
    table.show(tapers, kept -> Long.toString(kept.id()));
    note.setText(
        tapers.isEmpty()
            ? "No taper is kept yet: a name and Enter keep the one that is typed"
            : "Enter uses a taper, R renames it, Delete deletes it, Ctrl Z undoes");
  }

  /**
   * @param taper what is typed now; null while it makes no shaft
   */
  void show(Taper taper) {
    typed = taper;
  }

  private void keep() {
    String called = name.getText().strip();
    if (called.isEmpty()) {
      return;
    }
    if (renaming != null) {
      actions.renameTaper(renaming.id(), called, reply(renaming.name() + " is now " + called));
    } else if (typed == null) {
      say.accept("Length, tip and butt first: then there is a taper to keep");
    } else {
      actions.keepTaper(called, typed, reply("the taper " + called + " is kept"));
    }
  }

  private void rename(KeptTaper kept) {
    renaming = kept;
    name.setText(kept.name());
    name.selectAll();
    name.requestFocusInWindow();
    say.accept("Another name for " + kept.name() + ", then Enter");
  }

  private void delete(KeptTaper kept) {
    actions.deleteTaper(kept.id(), reply("the taper " + kept.name() + " is deleted"));
  }

  /** Takes back what was done last to a kept taper. */
  void undo() {
    actions.undoTaper(reply("taken back"));
  }

  private Reply reply(String done) {
    return Reply.onEventThread(
        () -> {
          renaming = null;
          name.setText("");
          say.accept(done);
        },
        say);
  }
}
