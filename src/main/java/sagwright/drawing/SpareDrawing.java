package sagwright.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.StringJoiner;
import sagwright.beam.Taper;
import sagwright.finish.Cut;
import sagwright.finish.FinishPlan;
import sagwright.quantity.Figures;

/**
 * The finished round of one plan, and above it the wood that each of a few blanks has to spare,
 * much enlarged and all on one side; where it is least is marked.
 */
public final class SpareDrawing {
  private static final double THICKER = 3;
  private static final double TEXT = 14;
  private static final double LABEL_ROW = 19;

  /** Room under the round for the balance point and one line of text. */
  private static final double BELOW = 22;

  private static final double[] TIMES = {40, 20, 10, 5, 2, 1};
  private static final int PLACES = 160;

  /**
   * A blank that the plan is cut from.
   *
   * @param balanceFromButtMm of the finished shaft, null where not known
   */
  public record Shaft(String tag, Taper blank, Cut cut, Double balanceFromButtMm) {
    /**
     * The lesser of depth and width less the finished diameter at x on the finished shaft.
     *
     * @return in mm, NaN where there is no blank
     */
    double spareMm(FinishPlan plan, double xMm) {
      double on = cut.fromMm() + xMm;
      if (on < 0 || on > blank.lengthMm()) {
        return Double.NaN;
      }
      return Math.min(blank.depthAt(on), blank.widthAt(on)) - plan.diameterAt(xMm);
    }
  }

  /** The plan and the blanks, the first pick first. */
  public record Scene(FinishPlan plan, List<Shaft> shafts) {
    public Scene {
      shafts = List.copyOf(shafts);
    }
  }

  private record Label(TextLine text, double width, double atPx, double yPx) {}

  private final Style style;

  public SpareDrawing(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, Scene scene) {
    Style.smooth(g);
    FinishPlan plan = scene.plan();
    double pxPerMm = area.getWidth() / plan.lengthMm();
    double thickest = thickestMm(plan);
    double thicker = THICKER;
    while (thicker > 1 && thickest * pxPerMm * thicker > area.getHeight() / 3) {
      thicker -= 0.5;
    }
    double axis = area.getMaxY() - BELOW - thickest * pxPerMm * thicker / 2;
    LongScale scale = new LongScale(area.getMinX(), axis, pxPerMm, thicker, 1);
    ShaftOutline round = ShaftOutline.straight(plan.taper(), scale, 0);
    double labelRows = rowsOf(scene.shafts().size());
    double room = axis - scale.halfPx(thickest) - area.getMinY() - labelRows * LABEL_ROW - 8;
    double times = times(scene, room / pxPerMm);
    for (int i = 0; i < scene.shafts().size(); i++) {
      spare(g, scene, i, round, scale, times);
    }
    Double balance = scene.shafts().isEmpty() ? null : scene.shafts().get(0).balanceFromButtMm();
    new FinishDrawing(style)
        .finished(
            g,
            new FinishDrawing.Scene(null, plan, 0, balance == null ? Double.NaN : balance, null),
            scale);
    marks(g, area, scene, round, scale, times);
    below(g, area, scene, scale, times);
  }

  private static double thickestMm(FinishPlan plan) {
    return plan.taper().stations().stream().mapToDouble(s -> s.depthMm()).max().orElse(0);
  }

  private static double times(Scene scene, double roomMm) {
    double greatest = 0;
    for (Shaft shaft : scene.shafts()) {
      for (int i = 0; i <= PLACES; i++) {
        double spare = shaft.spareMm(scene.plan(), scene.plan().lengthMm() * i / PLACES);
        greatest = Math.max(greatest, Double.isNaN(spare) ? 0 : spare);
      }
    }
    for (double times : TIMES) {
      if (greatest * times <= roomMm) {
        return times;
      }
    }
    return TIMES[TIMES.length - 1];
  }

  /** One blank's spare as a line over the round; the first pick's wood is filled in. */
  private void spare(
      Graphics2D g, Scene scene, int place, ShaftOutline round, LongScale scale, double times) {
    Shaft shaft = scene.shafts().get(place);
    double length = scene.plan().lengthMm();
    Path2D edge = new Path2D.Double();
    Path2D wood = new Path2D.Double();
    wood.moveTo(scale.px(0), round.topPx(0));
    boolean begun = false;
    for (int i = 0; i <= PLACES; i++) {
      double x = length * i / PLACES;
      double spare = shaft.spareMm(scene.plan(), x);
      double y = round.topPx(x) - (Double.isNaN(spare) ? 0 : spare * scale.pxPerMm() * times);
      wood.lineTo(scale.px(x), y);
      if (begun && !Double.isNaN(spare)) {
        edge.lineTo(scale.px(x), y);
      } else {
        edge.moveTo(scale.px(x), y);
      }
      begun = !Double.isNaN(spare);
    }
    if (place == 0) {
      for (int i = PLACES; i >= 0; i--) {
        wood.lineTo(scale.px(length * i / PLACES), round.topPx(length * i / PLACES));
      }
      wood.closePath();
      g.setColor(style.palette().plank());
      g.fill(wood);
    }
    g.setColor(style.palette().ink());
    g.setStroke(PickLine.of(place).stroke(2.2));
    g.draw(edge);
  }

  /** A ring where each blank's spare is least, its figure above it. */
  private void marks(
      Graphics2D g,
      Rectangle2D area,
      Scene scene,
      ShaftOutline round,
      LongScale scale,
      double times) {
    Palette p = style.palette();
    List<Label> labels = new ArrayList<>();
    for (Shaft shaft : scene.shafts()) {
      double x = shaft.cut().leastSpareAtMm();
      double y = round.topPx(x) - shaft.cut().leastSpareMm() * scale.pxPerMm() * times;
      Font bold = style.lettering().bold(TEXT);
      Font regular = style.lettering().regular(TEXT);
      TextLine text =
          TextLine.of(shaft.tag(), bold, p.ink())
              .after(
                  8,
                  "least spare " + Figures.rounded(shaft.cut().leastSpareMm(), 2) + " mm",
                  regular,
                  p.ink());
      labels.add(new Label(text, text.width(g), scale.px(x), y));
    }
    labels.sort(Comparator.comparingDouble(Label::atPx));
    int rows = rowsOf(labels.size());
    for (int row = 0; row < rows; row++) {
      List<Label> own = new ArrayList<>();
      for (int i = row; i < labels.size(); i += rows) {
        own.add(labels.get(i));
      }
      double[] from = sideBySide(own, area);
      double baseline = area.getMinY() + 13 + row * LABEL_ROW;
      for (int i = 0; i < own.size(); i++) {
        Label label = own.get(i);
        double end = from[i] + label.width();
        ring(g, label, baseline + 5, Math.max(from[i] + 6, Math.min(label.atPx(), end - 6)));
        g.setColor(p.paper()); // a line of the row above ends at its edge
        g.fill(new Rectangle2D.Double(from[i] - 2, baseline - 13, label.width() + 4, 17));
        label.text().fromLeft(g, from[i], baseline);
      }
    }
  }

  private static int rowsOf(int labels) {
    return labels > 2 ? 2 : 1;
  }

  /** Where labels begin: each over its place, as far as they do not touch and are all seen. */
  private static double[] sideBySide(List<Label> labels, Rectangle2D area) {
    LabelRow.Label[] row =
        labels.stream()
            .map(label -> new LabelRow.Label(label.atPx(), label.width()))
            .toArray(LabelRow.Label[]::new);
    return LabelRow.begins(row, area.getMinX(), area.getMaxX());
  }

  private void ring(Graphics2D g, Label label, double fromY, double fromX) {
    Palette p = style.palette();
    g.setColor(p.secondInk());
    g.setStroke(Style.HAIR);
    if (label.yPx() - 6 > fromY) {
      g.draw(new Line2D.Double(fromX, fromY, label.atPx(), label.yPx() - 6));
    }
    Ellipse2D ring = new Ellipse2D.Double(label.atPx() - 5, label.yPx() - 5, 10, 10);
    g.setColor(p.paper());
    g.fill(ring);
    g.setColor(p.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(ring);
  }

  /** Where the first pick balances, NaN where not known. */
  private static double markPx(Scene scene, LongScale scale) {
    Double balance = scene.shafts().isEmpty() ? null : scene.shafts().get(0).balanceFromButtMm();
    return balance == null ? Double.NaN : scale.px(scene.plan().lengthMm() - balance);
  }

  private void below(Graphics2D g, Rectangle2D area, Scene scene, LongScale scale, double times) {
    Palette p = style.palette();
    Font font = style.lettering().regular(TEXT);
    double baseline = area.getMaxY() - 4;
    StringJoiner balances = new StringJoiner(", ", "balance ", " mm");
    balances.setEmptyValue("");
    for (Shaft shaft : scene.shafts()) {
      if (shaft.balanceFromButtMm() != null) {
        balances.add(Figures.rounded(shaft.balanceFromButtMm(), 0));
      }
    }
    String note =
        "finished round drawn "
            + Figures.asTyped(scale.thicker())
            + " times thicker"
            + (scene.shafts().isEmpty()
                ? ""
                : "; spare " + Figures.asTyped(times) + " times, all above it");
    double end = TextLine.of(note, font, p.secondInk()).fromLeft(g, area.getMinX(), baseline);
    TextLine balance = TextLine.of(balances.toString(), font, p.secondInk());
    double from = area.getMaxX() - balance.width(g);
    double mark = markPx(scene, scale);
    if (from >= end + 20 && (Double.isNaN(mark) || from > mark + 14)) {
      balance.fromLeft(g, from, baseline);
    }
  }
}
