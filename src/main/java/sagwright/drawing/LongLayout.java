package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.beam.SetUp;
import sagwright.beam.Taper;

/**
 * Where everything of the bench's long drawing stands. Depends on the shaft, its set-up and the
 * greatest bend, not on the moment: nothing moves while a test runs but what is bent.
 */
record LongLayout(
    LongScale scale,
    Rectangle2D area,
    double bedPx,
    Place figure,
    Place instruction,
    Place deflection,
    List<Note> notes) {

  /**
   * Where a text stands; its greatest width is what it was given room for.
   *
   * @param xPx the left or the right end
   */
  record Place(double xPx, boolean endsThere) {}

  /** What a note tells, and where there is room for it. */
  record Note(Topic topic, Place place) {}

  /** The notes under the shaft, the one that may be left out last. */
  enum Topic {
    SCALE,
    LISTENING
  }

  static final double FIGURE_SIZE = 84;
  static final double UNIT_SIZE = 34;
  static final double UNIT_GAP = 14;
  static final double NOTE_SIZE = 14;
  private static final double THICKER = 3;
  private static final double THICKEST_PX = 92;
  private static final double TOP_ZONE = 106;
  private static final double FIGURE_ZONE = 88;
  static final double BED_ZONE = 35;
  static final double INSTRUCTION_ROOM = 400;
  static final double NOTE_ROOM = 232;
  private static final double BESIDE_ARROW = 32;
  private static final double BESIDE_GAUGE = 20;
  private static final double BESIDE_SUPPORT = 14;
  private static final double FROM_GAUGE = 14;
  private static final double[] TIMES = {
    200, 150, 100, 80, 60, 50, 40, 30, 25, 20, 16, 14, 12, 10, 8, 6, 5, 4, 3, 2, 1
  };

  static LongLayout of(Graphics2D g, Style style, Rectangle2D area, LongScene scene) {
    SetUp setUp = scene.setUp();
    double bedPx = area.getMaxY() - BED_ZONE;
    LongScale flat = flat(area, scene);
    double figureWidth = figureWidth(g, style);

    FreeSpans top = new FreeSpans(area.getMinX(), area.getMaxX());
    double arrow = flat.px(setUp.loadMm());
    top.take(arrow - BESIDE_ARROW, arrow + BESIDE_ARROW);
    Place figure = beside(top, arrow, figureWidth, true, 0);
    Place instruction = beside(top, arrow, INSTRUCTION_ROOM, false, 0);

    FreeSpans bottom = new FreeSpans(area.getMinX(), area.getMaxX());
    double gauge = flat.px(setUp.gaugeMm());
    bottom.take(gauge - BESIDE_GAUGE, gauge + BESIDE_GAUGE);
    for (double mm : new double[] {setUp.supportAMm(), setUp.supportBMm()}) {
      bottom.take(flat.px(mm) - BESIDE_SUPPORT, flat.px(mm) + BESIDE_SUPPORT);
    }
    Place deflection = beside(bottom, gauge, figureWidth + FROM_GAUGE, true, FROM_GAUGE);
    List<Note> notes = notes(bottom, gauge, area.getMaxX());

    LongScale scale = flat.bent(1);
    for (double times : TIMES) {
      scale = flat.bent(times);
      if (fits(scene, scale, area, bedPx, figure, instruction)) {
        break;
      }
    }
    return new LongLayout(scale, area, bedPx, figure, instruction, deflection, notes);
  }

  private static LongScale flat(Rectangle2D area, LongScene scene) {
    Taper taper = scene.taper();
    double pxPerMm = area.getWidth() / taper.lengthMm();
    double thickestMm = 0;
    for (int i = 0; i <= 20; i++) {
      thickestMm = Math.max(thickestMm, seenMm(scene, taper.lengthMm() * i / 20));
    }
    double thicker = THICKER;
    while (thicker > 1 && thickestMm * pxPerMm * thicker > THICKEST_PX) {
      thicker -= 0.5;
    }
    LongScale scale = new LongScale(area.getMinX(), 0, pxPerMm, thicker, 1);
    double half = scale.halfPx(seenMm(scene, scene.setUp().loadMm()));
    return new LongScale(
        area.getMinX(), area.getMinY() + TOP_ZONE + 10 + half, pxPerMm, thicker, 1);
  }

  private static double seenMm(LongScene scene, double xMm) {
    return ShaftOutline.seenDiameterMm(scene.taper(), xMm, scene.setUp().turnDegrees());
  }

  /** Whether the shaft, bent as far as it will be, stays clear of figures, words and bed. */
  private static boolean fits(
      LongScene scene,
      LongScale scale,
      Rectangle2D area,
      double bedPx,
      Place figure,
      Place instruction) {
    double end = scene.taper().lengthMm();
    double overFigure = area.getMinY() + 92;
    for (int i = 0; i <= 60; i++) {
      double x = end * i / 60;
      double centre = scale.axisPx() + scale.bendPx(scene.bendMm(x, scene.greatestBendMm()));
      double half = scale.halfPx(seenMm(scene, x));
      double ceiling = area.getMinY() + 2;
      if (covers(instruction, INSTRUCTION_ROOM, scale.px(x))) {
        ceiling = area.getMinY() + TOP_ZONE;
      } else if (covers(figure, 300, scale.px(x))) {
        ceiling = overFigure;
      }
      if (centre - half < ceiling || centre + half > bedPx - FIGURE_ZONE) {
        return false;
      }
    }
    return true;
  }

  private static boolean covers(Place place, double width, double px) {
    double from = place.endsThere() ? place.xPx() - width : place.xPx();
    return px >= from && px <= from + width;
  }

  /**
   * Beside a place, on the preferred side if there is room, and that room taken.
   *
   * @param width gap included
   */
  private static Place beside(
      FreeSpans spans, double px, double width, boolean preferRight, double gap) {
    Optional<FreeSpans.Span> right = spans.rightOf(px, width);
    Optional<FreeSpans.Span> left = spans.leftOf(px, width);
    boolean toRight = right.isPresent() && (preferRight || left.isEmpty());
    if (toRight) {
      double from = right.get().fromPx();
      spans.take(from, from + width + 12);
      return new Place(from + gap, false);
    }
    double to = left.map(FreeSpans.Span::toPx).orElse(px);
    spans.take(to - width - 12, to);
    return new Place(to - gap, true);
  }

  /** The scale at the right end, the listening band near the gauge, as far as there is room. */
  private static List<Note> notes(FreeSpans spans, double gaugePx, double rightPx) {
    List<Note> notes = new ArrayList<>();
    Optional<FreeSpans.Span> last = spans.leftOf(rightPx, NOTE_ROOM);
    last.ifPresent(
        span -> {
          notes.add(new Note(Topic.SCALE, new Place(span.toPx(), true)));
          spans.take(span.toPx() - NOTE_ROOM - 12, span.toPx());
        });
    Optional<FreeSpans.Span> left = spans.leftOf(gaugePx, NOTE_ROOM);
    Optional<FreeSpans.Span> right = spans.rightOf(gaugePx, NOTE_ROOM);
    if (left.isPresent()) {
      notes.add(new Note(Topic.LISTENING, new Place(left.get().toPx(), true)));
    } else if (right.isPresent()) {
      notes.add(new Note(Topic.LISTENING, new Place(right.get().fromPx(), false)));
    }
    return List.copyOf(notes);
  }

  /** The cell of a live figure: it keeps its width while the value changes. */
  static double cellWidth(Graphics2D g, Style style) {
    return TextLine.of("00.00", style.lettering().semiBold(FIGURE_SIZE), style.palette().ink())
        .width(g);
  }

  /** Cell and unit. */
  static double figureWidth(Graphics2D g, Style style) {
    return cellWidth(g, style)
        + UNIT_GAP
        + TextLine.of("mm", style.lettering().regular(UNIT_SIZE), style.palette().ink()).width(g);
  }
}
