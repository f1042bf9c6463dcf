package sagwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import sagwright.beam.SetUp;
import sagwright.quantity.Figures;

/**
 * The long drawing of the bench: the shaft across the full width, bent as the gauge says by the
 * elastic curve of its own taper, on its supports, under its load, with both figures at their
 * place.
 */
public final class LongDrawing {
  private static final double INSTRUCTION_SIZE = 54;
  private static final int DETAIL_SIZE = 24;
  private static final int LEAST_DETAIL_SIZE = 16;
  private static final double EMPTY_BENCH_MM = 1500;

  private final Style style;

  public LongDrawing(Style style) {
    this.style = style;
  }

  /**
   * @param area to draw in, at least 900 × 330
   * @param hoverMm a place to read off, NaN for none
   */
  public void paint(Graphics2D g, Rectangle2D area, LongScene scene, double hoverMm) {
    Style.smooth(g);
    LongLayout layout = LongLayout.of(g, style, area, scene);
    LongScene.Moment now = scene.moment();
    double bendMm = Double.isFinite(now.bendMm()) ? now.bendMm() : 0;
    SetUp setUp = scene.setUp();
    ShaftOutline shaft =
        new ShaftOutline(
            scene.taper(), layout.scale(), setUp.turnDegrees(), x -> scene.bendMm(x, bendMm));

    ShaftOutline.straight(scene.taper(), layout.scale(), setUp.turnDegrees())
        .ghost(g, style.palette());
    shaft.fill(g, style.palette());
    shaft.strokes(g, style.palette(), scene.strokesMm());
    shaft.stations(g, style.palette());
    shaft.outline(g, style.palette());
    support(g, layout, shaft, setUp.supportAMm());
    support(g, layout, shaft, setUp.supportBMm());
    gauge(g, layout, shaft, setUp.gaugeMm());
    LoadArrow.paint(
        g,
        style.palette(),
        layout.scale().px(setUp.loadMm()),
        layout.area().getMinY() + 16,
        shaft.topPx(setUp.loadMm()),
        13.5);
    new Ruler(style, layout.scale(), scene.taper().lengthMm())
        .paint(
            g,
            layout.bedPx(),
            setUp.supportAMm(),
            setUp.supportBMm(),
            setUp.loadMm(),
            setUp.gaugeMm());
    words(g, layout, now);
    notes(g, layout, scene);
    if (Double.isFinite(hoverMm) && hoverMm >= 0 && hoverMm <= scene.taper().lengthMm()) {
      readOff(g, layout, scene, shaft, hoverMm);
    }
  }

  /** The bench with nothing on it: what to do stands where it always stands. */
  public void paintEmpty(Graphics2D g, Rectangle2D area, String instruction, String detail) {
    Style.smooth(g);
    Palette p = style.palette();
    double bedPx = area.getMaxY() - LongLayout.BED_ZONE;
    LongScale scale = new LongScale(area.getMinX(), 0, area.getWidth() / EMPTY_BENCH_MM, 1, 1);
    TextLine.of(instruction, style.lettering().bold(INSTRUCTION_SIZE), p.ink())
        .fromLeft(g, area.getMinX(), area.getMinY() + 67);
    TextLine.of(detail, style.lettering().regular(DETAIL_SIZE), p.ink())
        .fromLeft(g, area.getMinX(), area.getMinY() + 104);
    for (double part : new double[] {0.07, 0.74}) {
      wedge(g, scale.px(part * EMPTY_BENCH_MM), 11, bedPx - 168, bedPx);
    }
    new Ruler(style, scale, EMPTY_BENCH_MM).paint(g, bedPx);
  }

  /** The place along the shaft, in mm from the tip end, under a point of the picture. */
  public static double placeMm(Rectangle2D area, LongScene scene, double xPx) {
    return (xPx - area.getMinX()) * scene.taper().lengthMm() / area.getWidth();
  }

  private void support(Graphics2D g, LongLayout layout, ShaftOutline shaft, double xMm) {
    Rectangle2D bed = layout.area();
    double x = layout.scale().px(xMm);
    double room = Math.min(x - bed.getMinX(), bed.getMaxX() - x);
    wedge(g, x, Math.min(11, Math.max(3, room)), shaft.bottomPx(xMm), layout.bedPx());
  }

  private void wedge(Graphics2D g, double x, double foot, double tip, double bedPx) {
    Path2D wedge = new Path2D.Double();
    wedge.moveTo(x - 2, tip);
    wedge.lineTo(x + 2, tip);
    wedge.lineTo(x + foot, bedPx);
    wedge.lineTo(x - foot, bedPx);
    wedge.closePath();
    g.setColor(style.palette().ink());
    g.fill(wedge);
  }

  private void gauge(Graphics2D g, LongLayout layout, ShaftOutline shaft, double xMm) {
    double x = layout.scale().px(xMm);
    double tip = shaft.bottomPx(xMm) + 1;
    double block = layout.bedPx() - 34;
    g.setColor(style.palette().deflection());
    g.fill(new Ellipse2D.Double(x - 4.5, tip, 9, 9));
    g.setStroke(new BasicStroke(2.6f));
    g.draw(new Line2D.Double(x, tip + 4, x, block));
    g.fill(new Rectangle2D.Double(x - 10, block, 20, 34));
  }

  private void words(Graphics2D g, LongLayout layout, LongScene.Moment now) {
    Palette p = style.palette();
    figure(g, layout.figure(), layout.area().getMinY() + 82, now.loadN(), "N", p.load());
    figure(
        g, layout.deflection(), layout.bedPx() - 22, now.deflectionMm(), "mm", p.deflectionText());
    TextLine large =
        TextLine.of(now.instruction(), style.lettering().bold(INSTRUCTION_SIZE), p.ink());
    set(g, large, layout.instruction(), layout.area().getMinY() + 67);
    detail(g, layout, now.detail());
  }

  /** Beside the arrow, as large as there is room; a long sentence small and in two lines. */
  private void detail(Graphics2D g, LongLayout layout, String words) {
    Color ink = style.palette().ink();
    double top = layout.area().getMinY();
    for (int size = DETAIL_SIZE; size >= LEAST_DETAIL_SIZE; size--) {
      TextLine line = TextLine.of(words, style.lettering().regular(size), ink);
      if (line.width(g) <= LongLayout.INSTRUCTION_ROOM) {
        set(g, line, layout.instruction(), top + 100);
        return;
      }
    }
    Font font = style.lettering().regular(LEAST_DETAIL_SIZE);
    double baseline = top + 92;
    for (String line : TextLine.wrapped(g, words, font, LongLayout.INSTRUCTION_ROOM)) {
      set(g, TextLine.of(line, font, ink), layout.instruction(), baseline);
      baseline += 20;
    }
  }

  /** In a cell that stays as wide while the value changes; the unit stands still behind it. */
  private void figure(
      Graphics2D g,
      LongLayout.Place place,
      double baseline,
      double value,
      String unit,
      Color color) {
    double from = place.endsThere() ? place.xPx() - LongLayout.figureWidth(g, style) : place.xPx();
    double cellEnds = from + LongLayout.cellWidth(g, style);
    TextLine.of(
            Figures.rounded(value, 2), style.lettering().semiBold(LongLayout.FIGURE_SIZE), color)
        .toRight(g, cellEnds, baseline);
    TextLine.of(unit, style.lettering().regular(LongLayout.UNIT_SIZE), color)
        .fromLeft(g, cellEnds + LongLayout.UNIT_GAP, baseline);
  }

  private void notes(Graphics2D g, LongLayout layout, LongScene scene) {
    for (LongLayout.Note note : layout.notes()) {
      note(g, note.place(), layout.bedPx(), words(note.topic(), layout.scale(), scene));
    }
  }

  private static String[] words(LongLayout.Topic topic, LongScale scale, LongScene scene) {
    return switch (topic) {
      case SCALE ->
          new String[] {
            "shaft drawn " + times(scale.thicker()) + " thicker,",
            "its bend " + times(scale.bendLarger()) + " larger;",
            "bend of the frame taken off"
          };
      case LISTENING -> {
        LongScene.Dense dense = scene.dense();
        yield new String[] {
          "where the test listens: each stroke",
          "a hundredth of the answer, " + dense.strokes() + " of",
          "them between " + dense.fromMm() + " and " + dense.toMm() + " mm"
        };
      }
    };
  }

  private static String times(double factor) {
    return Figures.rounded(factor, factor == Math.rint(factor) ? 0 : 1) + " times";
  }

  private void note(Graphics2D g, LongLayout.Place place, double bedPx, String[] lines) {
    double baseline = bedPx - 18 - 19.0 * (lines.length - 1);
    for (String line : lines) {
      TextLine text =
          TextLine.of(
              line, style.lettering().regular(LongLayout.NOTE_SIZE), style.palette().secondInk());
      set(g, text, place, baseline);
      baseline += 19;
    }
  }

  private static void set(Graphics2D g, TextLine line, LongLayout.Place place, double baseline) {
    if (place.endsThere()) {
      line.toRight(g, place.xPx(), baseline);
    } else {
      line.fromLeft(g, place.xPx(), baseline);
    }
  }

  private void readOff(
      Graphics2D g, LongLayout layout, LongScene scene, ShaftOutline shaft, double xMm) {
    Palette p = style.palette();
    double x = layout.scale().px(xMm);
    g.setColor(p.ink());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(x, shaft.topPx(xMm) - 6, x, layout.bedPx() + 8));
    String diameters =
        Figures.rounded(scene.taper().depthAt(xMm), 2)
            + " × "
            + Figures.rounded(scene.taper().widthAt(xMm), 2)
            + " mm";
    TextLine line =
        TextLine.of(
                "at " + Figures.rounded(xMm, 0) + " mm", style.lettering().semiBold(14), p.ink())
            .after(10, diameters, style.lettering().regular(14), p.ink());
    double width = line.width(g);
    double left = layout.scale().px(0);
    double right = layout.scale().px(scene.taper().lengthMm());
    double from = Math.max(left, Math.min(right - width, x - width / 2));
    g.setColor(p.paper());
    g.fill(new Rectangle2D.Double(from - 8, layout.bedPx() + 9, width + 16, 24));
    line.fromLeft(g, from, layout.bedPx() + 25);
  }
}
