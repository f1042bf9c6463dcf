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
  /** Most runs written out at one side. */
  private static final int MOST_LINES = 2;

  private static final double ROOM_ABOVE = 66;
  private static final double SMALL_RADIUS = 32;
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
    if (isRoomy(sides)) {
      writtenAtTheirSides(g, area, turnDegrees, sides);
    } else {
      numberedAtTheirSides(g, area, turnDegrees, runs, sides);
    }
  }

  /**
   * Whether all runs can be written out where they belong: above, and at two places right of it.
   */
  private static boolean isRoomy(Map<Integer, List<TurnedRun>> sides) {
    List<Integer> right = sides.keySet().stream().filter(side -> side > 0).toList();
    boolean few = sides.values().stream().allMatch(runs -> runs.size() <= MOST_LINES);
    return few
        && right.stream().allMatch(side -> side > 30 && side < 150)
        && (right.size() < 2
            || right.size() == 2
                && right.get(1) - right.get(0) >= 60
                && right.stream().allMatch(side -> sides.get(side).size() == 1));
  }

  private void writtenAtTheirSides(
      Graphics2D g, Rectangle2D area, double turnDegrees, Map<Integer, List<TurnedRun>> sides) {
    double radius = Math.min(64, (area.getHeight() - ROOM_ABOVE - 4) / 2);
    double cx = area.getMinX() + radius + 8;
    double cy = area.getMinY() + ROOM_ABOVE + radius;
    asItLies(g, cx, cy, radius, turnDegrees, 22);
    for (Map.Entry<Integer, List<TurnedRun>> side : sides.entrySet()) {
      if (side.getKey() == 0) {
        lines(g, cx + 18, cy - radius - 34, false, side.getValue());
        continue;
      }
      double[] end = openArrow(g, new double[] {cx, cy, radius, 26}, side.getKey());
      TextLine.of(
              degrees(side.getValue().get(0).turnDegrees()),
              style.lettering().semiBold(16),
              style.palette().ink())
          .fromLeft(g, end[0] + 5, end[1] + 6);
      double deep = LINE * (side.getValue().size() - 1);
      boolean fitsUnder = end[1] + 36 + deep <= area.getMaxY();
      double first = fitsUnder ? end[1] + 36 : end[1] - 16 - deep;
      lines(g, area.getMaxX(), first, true, side.getValue());
    }
  }

  /** Each side bears the numbers of its runs; what they gave stands beside in a list. */
  private void numberedAtTheirSides(
      Graphics2D g,
      Rectangle2D area,
      double turnDegrees,
      List<TurnedRun> runs,
      Map<Integer, List<TurnedRun>> sides) {
    double cx = area.getMinX() + 88;
    double cy = area.getMinY() + ROOM_ABOVE + SMALL_RADIUS;
    asItLies(g, cx, cy, SMALL_RADIUS, turnDegrees, 36); // a number may stand under it
    for (Map.Entry<Integer, List<TurnedRun>> side : sides.entrySet()) {
      TextLine numbers =
          TextLine.of(
              numbers(side.getValue()), style.lettering().semiBold(14), style.palette().ink());
      if (side.getKey() == 0) {
        numbers.fromLeft(g, cx + 12, cy - SMALL_RADIUS - 22);
        continue;
      }
      double[] end = openArrow(g, new double[] {cx, cy, SMALL_RADIUS, 15}, side.getKey());
      double aside = Math.sin(Math.toRadians(side.getKey()));
      double width = numbers.width(g);
      numbers.fromLeft(
          g,
          Math.max(area.getMinX(), end[0] + aside * (width / 2 + 4) - width / 2),
          end[1] + 5 - 8 * Math.cos(Math.toRadians(side.getKey())));
    }
    list(g, area, runs);
  }

  private void list(Graphics2D g, Rectangle2D area, List<TurnedRun> runs) {
    Palette p = style.palette();
    int fit = (int) Math.floor((area.getHeight() - 20) / LINE);
    List<TurnedRun> shown = runs.subList(Math.max(0, runs.size() - fit), runs.size());
    double baseline = area.getMinY() + 20;
    TextLine.of("run: N/mm", style.lettering().regular(14), p.secondInk())
        .toRight(g, area.getMaxX(), baseline);
    for (TurnedRun run : shown) {
      baseline += LINE;
      TextLine.of(
              run.number() + (run.isNow() ? " now" : ": " + run.result()),
              run.isNow() ? style.lettering().bold(14) : style.lettering().regular(14),
              run.isNow() ? p.ink() : p.secondInk())
          .toRight(g, area.getMaxX(), baseline);
    }
  }

  /** "3", "3, 4", "…7": the newest where there is no room for all. */
  private static String numbers(List<TurnedRun> runs) {
    int first = runs.get(0).number();
    int last = runs.get(runs.size() - 1).number();
    return switch (runs.size()) {
      case 1 -> String.valueOf(first);
      case 2 -> first + ", " + last;
      default -> "…" + last;
    };
  }

  /**
   * @param turnPx how high over the wood the turn is written
   */
  private void asItLies(
      Graphics2D g, double cx, double cy, double radius, double turnDegrees, double turnPx) {
    wood(g, cx, cy, radius, turnDegrees);
    mark(g, cx, cy, radius, turnDegrees);
    LoadArrow.paint(g, style.palette(), cx, cy - radius - 48, cy - radius, 9.5);
    TextLine.of(degrees(turnDegrees), style.lettering().bold(20), style.palette().ink())
        .toRight(g, cx - 14, cy - radius - turnPx);
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

  /**
   * An open arrow at the side that was up.
   *
   * @param circle middle, radius and how long the arrow is
   * @return where it comes from, x and y
   */
  private double[] openArrow(Graphics2D g, double[] circle, int clockwise) {
    double angle = Math.toRadians(clockwise - 90);
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    double fromX = circle[0] + dx * (circle[2] + 3);
    double fromY = circle[1] + dy * (circle[2] + 3);
    double toX = fromX + dx * circle[3];
    double toY = fromY + dy * circle[3];
    g.setColor(style.palette().ink());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(fromX + dx * 11, fromY + dy * 11, toX, toY));
    Path2D head = new Path2D.Double();
    head.moveTo(fromX, fromY);
    head.lineTo(fromX + dx * 11 - dy * 6, fromY + dy * 11 + dx * 6);
    head.lineTo(fromX + dx * 11 + dy * 6, fromY + dy * 11 - dx * 6);
    head.closePath();
    g.draw(head);
    return new double[] {toX, toY};
  }

  private void lines(
      Graphics2D g, double x, double firstBaseline, boolean toRight, List<TurnedRun> runs) {
    Palette p = style.palette();
    double baseline = firstBaseline;
    for (TurnedRun run : runs) {
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
