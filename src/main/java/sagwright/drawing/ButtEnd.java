package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sagwright.quantity.Figures;

/**
 * The shaft seen from its butt end as it lies now, its mark where it is, and each run's value at
 * the side that was up. A turn of 90° brings the mark, and with it all that was up before, to the
 * right.
 */
public final class ButtEnd {
  /** Most lines written at one side; earlier ones are counted. */
  private static final int MOST_LINES = 3;

  private static final double ROOM_ABOVE = 66;
  private static final double ROOM_BELOW = 36;
  private static final double LINE = 19;

  private final Style style;

  public ButtEnd(Style style) {
    this.style = style;
  }

  /**
   * @param turnDegrees how the shaft lies now
   * @param runs those so far, oldest first
   */
  public void paint(Graphics2D g, Rectangle2D area, double turnDegrees, List<TurnedRun> runs) {
    Style.smooth(g);
    Map<Integer, List<TurnedRun>> sides = new TreeMap<>();
    for (TurnedRun run : runs) {
      int clockwise = Math.floorMod(Math.round((float) (turnDegrees - run.turnDegrees())), 360);
      sides.computeIfAbsent(clockwise, side -> new ArrayList<>()).add(run);
    }
    boolean toTheLeft = sides.keySet().stream().anyMatch(side -> side > 180);
    boolean below = sides.containsKey(180);
    double room = area.getHeight() - ROOM_ABOVE - (below ? ROOM_BELOW : 4);
    double radius = Math.min(toTheLeft ? 38 : 64, room / 2);
    double cx = toTheLeft ? area.getCenterX() : area.getMinX() + radius + 8;
    double cy = area.getMinY() + ROOM_ABOVE + radius;
    wood(g, cx, cy, radius, turnDegrees);
    mark(g, cx, cy, radius, turnDegrees);
    LoadArrow.paint(g, style.palette(), cx, cy - radius - 48, cy - radius, 9.5);
    TextLine.of(degrees(turnDegrees), style.lettering().bold(20), style.palette().ink())
        .toRight(g, cx - 18, cy - radius - 22);
    for (Map.Entry<Integer, List<TurnedRun>> side : sides.entrySet()) {
      if (side.getKey() == 0) {
        lines(g, cx + 18, cy - radius - 34, false, side.getValue());
      } else {
        side(g, area, new double[] {cx, cy, radius}, side.getKey(), side.getValue());
      }
    }
  }

  private void wood(Graphics2D g, double cx, double cy, double radius, double turnDegrees) {
    Palette p = style.palette();
    Ellipse2D round = new Ellipse2D.Double(cx - radius, cy - radius, 2 * radius, 2 * radius);
    g.setColor(p.ash());
    g.fill(round);
    Shape clip = g.getClip();
    g.clip(round);
    double away = Math.toRadians(turnDegrees + 135);
    double pithX = cx + 1.35 * radius * Math.cos(away);
    double pithY = cy + 1.35 * radius * Math.sin(away);
    g.setColor(p.grain());
    g.setStroke(new BasicStroke(1.1f));
    for (double r = radius * 0.45; r < radius * 2.5; r += radius * 0.19) {
      g.draw(new Ellipse2D.Double(pithX - r, pithY - r, 2 * r, 2 * r));
    }
    g.setClip(clip);
    g.setColor(p.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(round);
  }

  private void mark(Graphics2D g, double cx, double cy, double radius, double turnDegrees) {
    double up = Math.toRadians(turnDegrees - 90);
    double dx = Math.cos(up);
    double dy = Math.sin(up);
    Path2D wedge = new Path2D.Double();
    wedge.moveTo(cx + dx * radius * 0.6, cy + dy * radius * 0.6);
    wedge.lineTo(cx + dx * radius - dy * 9, cy + dy * radius + dx * 9);
    wedge.lineTo(cx + dx * radius + dy * 9, cy + dy * radius - dx * 9);
    wedge.closePath();
    g.setColor(style.palette().ebony());
    g.fill(wedge);
  }

  /** An open arrow at the side that was up, its turn and its runs. */
  private void side(
      Graphics2D g, Rectangle2D area, double[] circle, int clockwise, List<TurnedRun> runs) {
    Palette p = style.palette();
    double angle = Math.toRadians(clockwise - 90);
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    double fromX = circle[0] + dx * (circle[2] + 3);
    double fromY = circle[1] + dy * (circle[2] + 3);
    double toX = fromX + dx * 26;
    double toY = fromY + dy * 26;
    g.setColor(p.ink());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(fromX + dx * 11, fromY + dy * 11, toX, toY));
    Path2D head = new Path2D.Double();
    head.moveTo(fromX, fromY);
    head.lineTo(fromX + dx * 11 - dy * 6, fromY + dy * 11 + dx * 6);
    head.lineTo(fromX + dx * 11 + dy * 6, fromY + dy * 11 - dx * 6);
    head.closePath();
    g.draw(head);
    TextLine turn =
        TextLine.of(degrees(runs.get(0).turnDegrees()), style.lettering().semiBold(16), p.ink());
    if (clockwise == 180) {
      turn.fromLeft(g, toX + 6, toY + 1);
      lines(
          g,
          toX + 6 + turn.width(g) + 8,
          toY + 1,
          false,
          runs.subList(runs.size() - 1, runs.size()));
    } else {
      double deep = LINE * (Math.min(MOST_LINES, runs.size()) - 1);
      boolean fitsUnder = toY + 36 + deep <= area.getMaxY();
      double first = fitsUnder ? toY + 36 : toY - 16 - deep;
      boolean onTheLeft = clockwise > 180;
      if (onTheLeft) {
        turn.toRight(g, toX - 5, toY + 6);
      } else {
        turn.fromLeft(g, toX + 5, toY + 6);
      }
      lines(g, onTheLeft ? area.getMinX() : area.getMaxX(), first, !onTheLeft, runs);
    }
  }

  private void lines(
      Graphics2D g, double x, double firstBaseline, boolean toRight, List<TurnedRun> runs) {
    Palette p = style.palette();
    int skipped = Math.max(0, runs.size() - MOST_LINES);
    double baseline = firstBaseline;
    for (TurnedRun run : runs.subList(skipped, runs.size())) {
      TextLine line =
          TextLine.of(
              run.inWords(),
              run.isNow() ? style.lettering().bold(14) : style.lettering().regular(14),
              run.isNow() ? p.ink() : p.secondInk());
      if (toRight) {
        line.toRight(g, x, baseline);
      } else {
        line.fromLeft(g, x, baseline);
      }
      baseline += LINE;
    }
  }

  private static String degrees(double turn) {
    return Figures.rounded(turn, turn == Math.rint(turn) ? 0 : 1) + "°";
  }
}
