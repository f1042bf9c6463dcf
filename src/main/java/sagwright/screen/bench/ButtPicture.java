package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import sagwright.drawing.ButtEnd;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.TextLine;
import sagwright.drawing.TurnedRun;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The butt end as it lies now, with the runs so far at their turns. */
final class ButtPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private static final double NOTE_LINE = 18;
  private static final double UNDER_NOTE = 8;

  private transient BenchView view;

  ButtPicture() {
    super("turns", new Dimension(236, 246));
  }

  void show(BenchView next) {
    boolean same = view != null && view.turns().equals(next.turns());
    view = next;
    if (!same) {
      repaint();
    }
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (view == null) {
      return;
    }
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    BenchView.Turns turns = view.turns();
    TextLine.of("Butt end: mark " + whereMarkIs(turns.nowDegrees()), l.regular(16), p.secondInk())
        .fromLeft(g, 0, 20);
    List<String> note = TextLine.wrapped(g, turns.note(), l.regular(14), area.getWidth());
    double noteHeight = UNDER_NOTE + NOTE_LINE * note.size();
    new ButtEnd(Theme.style())
        .paint(
            g,
            new Rectangle2D.Double(0, 24, area.getWidth(), area.getHeight() - 24 - noteHeight),
            turns.nowDegrees(),
            turns.runs());
    double y = area.getHeight() - UNDER_NOTE - NOTE_LINE * (note.size() - 1);
    for (String line : note) {
      TextLine.of(line, l.regular(14), p.secondInk()).fromLeft(g, 0, y);
      y += NOTE_LINE;
    }
  }

  static String whereMarkIs(double turnDegrees) {
    return switch (Math.floorMod(Math.round((float) turnDegrees), 360)) {
      case 0 -> "up";
      case 90 -> "to the right";
      case 180 -> "down";
      case 270 -> "to the left";
      default -> "at " + Figures.rounded(turnDegrees, 0) + "°";
    };
  }

  @Override
  protected String describe() {
    if (view == null) {
      return "";
    }
    return "Mark "
        + whereMarkIs(view.turns().nowDegrees())
        + ". "
        + view.turns().runs().stream().map(TurnedRun::inWords).collect(Collectors.joining(", "))
        + ". "
        + view.turns().note();
  }
}
