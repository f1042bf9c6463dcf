package sagwright.screen.rack;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.FinishDrawing;
import sagwright.screen.ShaftPicture;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.QuietButton;
import sagwright.screen.theme.Text;

/** The record of one blank: the shaft as measured last, and its time line. */
final class RecordPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final ShaftPicture shaft = new ShaftPicture("record.shaft", "not measured yet");
  private final JLabel wood = Text.second("");
  private final TimeLine events = new TimeLine();
  private String shown = "";
  private final JScrollPane scroll = Lists.scrolled(events);

  /** What is done to a blank that is still there. */
  private final List<QuietButton> ofBlank = new ArrayList<>();

  RecordPanel(RecordKeys keys) {
    super(new MigLayout("insets 4 0 0 0, gap 0 8", "[grow,fill]", "[][grow,fill][]"));
    setName("rack.record");
    add(shaft, "growx, hmin pref, wrap");
    scroll.setName("record.scroll");
    add(scroll, "grow, hmin 100, wrap");
    JPanel doings = new JPanel(new MigLayout("insets 0, gap 16 0, hidemode 3", "", "[center]"));
    quiet(doings, "back", "back to the rack", "Esc", keys.back());
    ofBlank.add(quiet(doings, "measure", "measure anew", "M", keys.measure()));
    ofBlank.add(quiet(doings, "weigh", "weigh", "W", keys.weigh()));
    ofBlank.add(quiet(doings, "splice", "spliced", "P", keys.splice()));
    quiet(doings, "note", "note", "A", keys.note());
    ofBlank.add(quiet(doings, "end", "end", "E", keys.end()));
    doings.add(wood, "pushx, alignx right, wmin 0");
    add(doings, "growx");
  }

  /** What can be done with a record, by its buttons and its keys. */
  record RecordKeys(
      Runnable back,
      Runnable measure,
      Runnable weigh,
      Runnable splice,
      Runnable note,
      Runnable end) {}

  private static QuietButton quiet(JPanel to, String name, String words, String key, Runnable run) {
    QuietButton button = new QuietButton("record." + name, words, key, run);
    to.add(button);
    return button;
  }

  /** Moves the time line by so many of its events. */
  void move(int by) {
    JScrollBar bar = scroll.getVerticalScrollBar();
    bar.setValue(bar.getValue() + by * events.eventHeight());
  }

  void show(RackView.Opened record) {
    shaft.show(FinishDrawing.Scene.of(record.taper()));
    wood.setText(record.isEnded() ? "" : record.wood());
    ofBlank.forEach(button -> button.setVisible(!record.isEnded()));
    events.show(record.events());
    if (!record.tag().equals(shown)) {
      shown = record.tag();
      scroll.getVerticalScrollBar().setValue(0); // another record begins at its top
    }
  }
}
