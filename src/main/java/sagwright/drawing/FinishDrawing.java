package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import sagwright.beam.Splice;
import sagwright.beam.Taper;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.quantity.Figures;

/**
 * The long drawing of a shaft that lies still: a blank with its stations, a finished shaft, or the
 * finished shaft inside its blank with the spare wood hatched; ferrule, splice, weights, balance.
 */
public final class FinishDrawing {
  private static final double THICKER = 3;
  private static final double RULER = 34;

  /** Room under the shaft for what is named there. */
  private static final double NAMES = 22;

  /**
   * What is drawn.
   *
   * @param blank null where only the finished shaft is known
   * @param plan null for a blank alone
   * @param cutFromMm where the finished tip end lies on the blank; 0 without a blank
   * @param balanceFromButtMm of the finished shaft, NaN where not known
   * @param least where the least wood is left, null where not known
   */
  public record Scene(
      Taper blank, FinishPlan plan, double cutFromMm, double balanceFromButtMm, LeastSpare least) {
    /** A blank alone. */
    public static Scene of(Taper blank) {
      return new Scene(blank, null, 0, Double.NaN, null);
    }

    /** A finished shaft alone. */
    public static Scene of(FinishPlan plan) {
      return new Scene(null, plan, 0, Double.NaN, null);
    }

    double lengthMm() {
      double blankEnd = blank == null ? 0 : blank.lengthMm();
      double finishedEnd = plan == null ? 0 : Math.max(0, cutFromMm) + plan.lengthMm();
      return Math.max(blankEnd, finishedEnd);
    }

    private double thickestMm() {
      double thickest = 0;
      for (int i = 0; i <= 20; i++) {
        double part = i / 20.0;
        if (blank != null) {
          thickest = Math.max(thickest, blank.depthAt(part * blank.lengthMm()));
        }
        if (plan != null) {
          thickest = Math.max(thickest, plan.diameterAt(part * plan.lengthMm()));
        }
      }
      return thickest;
    }
  }

  /**
   * The least spare of a finished shaft; negative where it does not fit.
   *
   * @param atMm on the finished shaft
   */
  public record LeastSpare(double spareMm, double atMm) {}

  private final Style style;

  public FinishDrawing(Style style) {
    this.style = style;
  }

  public void paint(Graphics2D g, Rectangle2D area, Scene scene) {
    Style.smooth(g);
    Palette p = style.palette();
    double bed = area.getMaxY() - RULER;
    LongScale scale = scale(area, scene, bed);
    if (scene.blank() != null) {
      ShaftOutline blank = ShaftOutline.straight(scene.blank(), scale, 0);
      if (scene.plan() == null) {
        blank.fill(g, p);
      } else {
        spare(g, blank.shape());
      }
      blank.outline(g, p);
      blank.stations(g, p);
    }
    if (scene.plan() != null) {
      finished(g, scene, scale);
      if (scene.blank() != null) {
        cut(g, scene, scale);
      }
      names(g, area, scene, scale);
      if (scene.least() != null) {
        least(g, area, scene, scale);
      }
    }
    new Ruler(style, scale, scene.lengthMm()).paint(g, bed);
    TextLine.of(
            "drawn " + Figures.rounded(scale.thicker(), 1).replace(".0", "") + " times thicker",
            style.lettering().regular(14),
            p.secondInk())
        .toRight(g, area.getMaxX(), area.getMinY() + 12);
  }

  private LongScale scale(Rectangle2D area, Scene scene, double bed) {
    double thickest = scene.thickestMm();
    double pxPerMm = area.getWidth() / scene.lengthMm();
    double room = bed - area.getMinY() - 52 - (scene.plan() == null ? 0 : NAMES);
    double thicker = THICKER;
    while (thicker > 1 && thickest * pxPerMm * thicker > room) {
      thicker -= 0.5;
    }
    double axis = area.getMinY() + 32 + room / 2;
    return new LongScale(area.getMinX(), axis, pxPerMm, thicker, 1);
  }

  /** Where the saw goes: both ends of the finished shaft across its blank. */
  private void cut(Graphics2D g, Scene scene, LongScale scale) {
    g.setColor(style.palette().ink());
    g.setStroke(Style.DASHED);
    double last = scene.blank().lengthMm();
    for (double end : new double[] {0, scene.plan().lengthMm()}) {
      double at = scene.cutFromMm() + end;
      double half = scale.halfPx(scene.blank().depthAt(Math.max(0, Math.min(last, at)))) + 6;
      double x = scale.px(at);
      g.draw(new Line2D.Double(x, scale.axisPx() - half, x, scale.axisPx() + half));
    }
  }

  private void names(Graphics2D g, Rectangle2D area, Scene scene, LongScale onBlank) {
    FinishPlan plan = scene.plan();
    LongScale scale = onBlank.from(scene.cutFromMm());
    ShaftOutline outline = ShaftOutline.straight(plan.taper(), scale, 0);
    double balance = plan.lengthMm() - scene.balanceFromButtMm();
    new FinishMarks(style, scale, outline)
        .paint(g, area, plan, balance, area.getMaxY() - RULER - 7);
  }

  private void spare(Graphics2D g, Shape blank) {
    Palette p = style.palette();
    g.setColor(p.plank());
    g.fill(blank);
    Shape clip = g.getClip();
    g.clip(blank);
    g.setColor(p.grain());
    g.setStroke(new BasicStroke(0.8f));
    Rectangle2D box = blank.getBounds2D();
    double height = box.getHeight();
    for (double x = box.getMinX() - height; x < box.getMaxX(); x += 6) {
      g.draw(new Line2D.Double(x, box.getMaxY(), x + height, box.getMinY()));
    }
    g.setClip(clip);
  }

  /** The finished shaft with all that is in it, on the scale of its blank. */
  void finished(Graphics2D g, Scene scene, LongScale onBlank) {
    Palette p = style.palette();
    FinishPlan plan = scene.plan();
    LongScale scale = onBlank.from(scene.cutFromMm());
    ShaftOutline outline = ShaftOutline.straight(plan.taper(), scale, 0);
    outline.fill(g, p);
    if (plan.splice() != null) {
      splice(g, plan.taper(), plan.splice(), scale);
    }
    for (Weight weight : plan.weights()) {
      weight(g, weight, scale);
    }
    if (plan.ferrule() != null) {
      ferrule(g, outline, plan.ferrule().lengthMm(), scale);
    }
    outline.outline(g, p);
    if (Double.isFinite(scene.balanceFromButtMm())) {
      balance(g, outline, plan.lengthMm() - scene.balanceFromButtMm(), scale);
    }
  }

  private void weight(Graphics2D g, Weight weight, LongScale scale) {
    double half = scale.halfPx(weight.diameterMm());
    Rectangle2D box =
        new Rectangle2D.Double(
            scale.px(weight.fromMm()),
            scale.axisPx() - half,
            (weight.toMm() - weight.fromMm()) * scale.pxPerMm(),
            2 * half);
    g.setColor(style.palette().brass());
    g.fill(box);
    g.setColor(style.palette().ink());
    g.setStroke(Style.HAIR);
    g.draw(box);
  }

  private void ferrule(Graphics2D g, ShaftOutline outline, double lengthMm, LongScale scale) {
    Path2D ring = new Path2D.Double();
    ring.moveTo(scale.px(0), outline.topPx(0));
    ring.lineTo(scale.px(lengthMm), outline.topPx(lengthMm));
    ring.lineTo(scale.px(lengthMm), outline.bottomPx(lengthMm));
    ring.lineTo(scale.px(0), outline.bottomPx(0));
    ring.closePath();
    g.setColor(style.palette().brass());
    g.fill(ring);
  }

  /** The splice wood above and below the core, as the round hides it less and less. */
  private void splice(Graphics2D g, Taper taper, Splice splice, LongScale scale) {
    double end = taper.lengthMm();
    double radiusAtPoints = taper.depthAt(splice.fromMm()) / 2;
    for (int side : new int[] {-1, 1}) {
      Path2D wood = new Path2D.Double();
      wood.moveTo(
          scale.px(splice.fromMm()), scale.axisPx() + side * scale.halfPx(2 * radiusAtPoints));
      for (int i = 1; i <= 12; i++) {
        double x = splice.fromMm() + (end - splice.fromMm()) * i / 12;
        wood.lineTo(scale.px(x), scale.axisPx() + side * scale.halfPx(taper.depthAt(x)));
      }
      wood.lineTo(
          scale.px(end), scale.axisPx() + side * scale.halfPx(2 * splice.coreHalfAtButtMm()));
      wood.closePath();
      g.setColor(style.palette().ebony());
      g.fill(wood);
    }
  }

  private void balance(Graphics2D g, ShaftOutline outline, double xMm, LongScale scale) {
    double x = scale.px(xMm);
    double y = outline.bottomPx(xMm) + 3;
    Path2D mark = new Path2D.Double();
    mark.moveTo(x, y);
    mark.lineTo(x + 8, y + 13);
    mark.lineTo(x - 8, y + 13);
    mark.closePath();
    g.setColor(style.palette().ink());
    g.fill(mark);
  }

  private void least(Graphics2D g, Rectangle2D area, Scene scene, LongScale scale) {
    Palette p = style.palette();
    double x = scale.px(scene.cutFromMm() + scene.least().atMm());
    double y = scale.axisPx() - scale.halfPx(scene.plan().diameterAt(scene.least().atMm()));
    double textY = area.getMinY() + 12;
    g.setColor(p.ink());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(x, textY + 6, x, y - 5));
    double centre = Math.max(area.getMinX() + 6, Math.min(area.getMaxX() - 6, x));
    Ellipse2D ring = new Ellipse2D.Double(centre - 5, y - 5, 10, 10);
    g.setColor(p.paper());
    g.fill(ring);
    g.setColor(p.ink());
    g.setStroke(Style.OUTLINE);
    g.draw(ring);
    double spare = scene.least().spareMm();
    String words =
        spare < 0
            ? Figures.rounded(-spare, 2) + " mm short here"
            : "least spare " + Figures.rounded(spare, 2) + " mm";
    TextLine line = TextLine.of(words, style.lettering().semiBold(14), p.ink());
    double from = Math.min(x - line.width(g) / 2, area.getMaxX() - 190 - line.width(g));
    line.fromLeft(g, Math.max(area.getMinX(), from), textY);
  }
}
