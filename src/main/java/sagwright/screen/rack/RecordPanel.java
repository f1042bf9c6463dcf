package sagwright.screen.rack;

import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.FinishDrawing;
import sagwright.screen.ShaftPicture;
import sagwright.screen.theme.Lists;
import sagwright.screen.theme.QuietButton;

/** The record of one blank: the shaft as measured last, and its time line. */
final class RecordPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final ShaftPicture shaft = new ShaftPicture("record.shaft", "not measured yet");
  private final TimeLine events = new TimeLine();

  RecordPanel(Runnable back, Runnable measure) {
    super(new MigLayout("insets 4 0 0 0, gap 0 8", "[grow,fill]", "[][grow,fill][]"));
    setName("rack.record");
    add(shaft, "growx, hmin pref, wrap");
    JScrollPane scroll = Lists.scrolled(events);
    add(scroll, "grow, hmin 100, wrap");
    QuietButton toRack = new QuietButton("record.back", "back to the rack", "Esc");
    toRack.addActionListener(e -> back.run());
    QuietButton anew = new QuietButton("record.measure", "measure anew", "M");
    anew.addActionListener(e -> measure.run());
    JPanel doings = new JPanel(new MigLayout("insets 0, gap 16 0"));
    doings.add(toRack);
    doings.add(anew);
    add(doings, "growx");
  }

  void show(RackView.Opened record) {
    shaft.show(FinishDrawing.Scene.of(record.taper()));
    events.show(record.events());
  }
}
