package sagwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;

class LongDrawingTest {
  private static final Style STYLE = new Style(Palette.LIGHT, Lettering.load());
  private static final Rectangle2D AREA = new Rectangle2D.Double(40, 40, 1110, 357);
  private static final Taper SHAFT =
      Taper.round(List.of(Station.round(0, 12), Station.round(1490, 30)), 1490);
  private static final Taper SQUARE =
      new Taper(
          sagwright.beam.SectionShape.RECTANGLE,
          List.of(new Station(0, 45, 44), new Station(1500, 46, 45)),
          1500);

  static Stream<LongScene> scenes() {
    return Stream.of(
        scene(SHAFT, new SetUp(100, 1100, 600, 600, 0), 6),
        scene(SHAFT, new SetUp(100, 1100, 400, 700, 45), 6),
        scene(SHAFT, new SetUp(700, 1450, 1075, 1075, 0), 2),
        scene(SHAFT, new SetUp(20, 500, 160, 160, 0), 9),
        scene(SHAFT, new SetUp(10, 1480, 745, 745, 90), 25),
        scene(SHAFT, new SetUp(10, 1480, 1300, 300, 90), 12),
        scene(SQUARE, new SetUp(100, 1400, 750, 750, 0), 1.5));
  }

  private static LongScene scene(Taper taper, SetUp setUp, double greatestMm) {
    return LongScene.of(taper, setUp, 14, greatestMm)
        .showing(
            new LongScene.Moment(
                "enough, let off", "as slowly as you loaded", 20.04, greatestMm, greatestMm));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void nothingIsDrawnOutsideItsArea(LongScene scene) {
    BufferedImage image = painted(g -> new LongDrawing(STYLE).paint(g, AREA, scene, 300));
    assertThat(inkOutside(image, AREA)).as("pixels outside the area").isZero();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void aLongSentenceIsSetSmallerOrInTwoLinesAndIsNotCut(LongScene scene) {
    for (String words :
        List.of(
            "there is no order R-0001 in this workshop",
            "the bench head fell silent in the middle of the test: look at its cable and test"
                + " again")) {
      LongScene saying =
          scene.showing(new LongScene.Moment("no answer", words, Double.NaN, Double.NaN, 0));
      BufferedImage image = painted(g -> new LongDrawing(STYLE).paint(g, AREA, saying, 300));
      assertThat(inkOutside(image, AREA)).as("pixels outside the area").isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void figuresAndWordsStandClearOfEachOther(LongScene scene) {
    painted(
        g -> {
          LongLayout layout = LongLayout.of(g, STYLE, AREA, scene);
          double figure = LongLayout.figureWidth(g, STYLE);
          Rectangle2D load = box(layout.figure(), figure);
          Rectangle2D words = box(layout.instruction(), LongLayout.INSTRUCTION_ROOM);
          assertThat(load.intersects(words)).as("load figure over instruction").isFalse();
          Rectangle2D deflection = box(layout.deflection(), figure);
          double gauge = layout.scale().px(scene.setUp().gaugeMm());
          assertThat(deflection.intersects(gauge - 10, 0, 20, 1)).as("figure on gauge").isFalse();
          for (LongLayout.Note note : layout.notes()) {
            Rectangle2D noted = box(note.place(), LongLayout.NOTE_ROOM);
            assertThat(noted.intersects(deflection)).as("note over figure").isFalse();
            assertThat(noted.intersects(gauge - 10, 0, 20, 1)).as("note on gauge").isFalse();
          }
        });
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theShaftBentAsFarAsItWillBeStaysBetweenFiguresAndBed(LongScene scene) {
    painted(
        g -> {
          LongLayout layout = LongLayout.of(g, STYLE, AREA, scene);
          double greatest = scene.greatestBendMm();
          ShaftOutline bent =
              new ShaftOutline(
                  scene.taper(),
                  layout.scale(),
                  scene.setUp().turnDegrees(),
                  x -> scene.bendMm(x, greatest));
          Rectangle2D box = bent.shape().getBounds2D();
          assertThat(box.getMinY()).isGreaterThanOrEqualTo(AREA.getMinY());
          assertThat(box.getMaxY()).isLessThan(layout.bedPx());
        });
  }

  @Test
  void aBentShaftRestsOnItsSupportsAndIsLowAtTheGaugeByTheStatedFactor() {
    SetUp setUp = new SetUp(100, 1100, 600, 600, 0);
    LongScene scene = LongScene.of(SHAFT, setUp, 14, 6);
    LongScale scale = new LongScale(0, 200, 0.75, 3, 10);
    ShaftOutline unbent = ShaftOutline.straight(SHAFT, scale, 0);
    ShaftOutline bent = new ShaftOutline(SHAFT, scale, 0, x -> scene.bendMm(x, 4));
    assertThat(bent.bottomPx(100)).isCloseTo(unbent.bottomPx(100), within(0.3));
    assertThat(bent.bottomPx(1100)).isCloseTo(unbent.bottomPx(1100), within(0.3));
    assertThat(bent.centrePx(600) - unbent.centrePx(600)).isCloseTo(4 * 0.75 * 10, within(0.1));
    assertThat(bent.topPx(1490)).as("the overhanging end lifts").isLessThan(unbent.topPx(1490));
  }

  @Test
  void theDenseStretchHoldsMoreThanHalfOfTheStrokes() {
    LongScene scene = LongScene.of(SHAFT, new SetUp(100, 1100, 600, 600, 0), 14, 6);
    LongScene.Dense dense = scene.dense();
    long inside = 0;
    for (double x : scene.strokesMm()) {
      inside += x >= dense.fromMm() && x <= dense.toMm() ? 1 : 0;
    }
    assertThat(dense.strokes()).isGreaterThan(50);
    assertThat((double) inside).isCloseTo(dense.strokes(), within(1.0));
  }

  private static org.assertj.core.data.Offset<Double> within(double by) {
    return org.assertj.core.data.Offset.offset(by);
  }

  private static Rectangle2D box(LongLayout.Place place, double width) {
    double from = place.endsThere() ? place.xPx() - width : place.xPx();
    return new Rectangle2D.Double(from, 0, width, 1);
  }

  private static BufferedImage painted(java.util.function.Consumer<Graphics2D> painter) {
    BufferedImage image = new BufferedImage(1190, 440, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    Style.smooth(g);
    painter.accept(g);
    g.dispose();
    return image;
  }

  private static int inkOutside(BufferedImage image, Rectangle2D area) {
    int outside = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        boolean inside =
            x >= area.getMinX() - 2
                && x <= area.getMaxX() + 2
                && y >= area.getMinY() - 2
                && y <= area.getMaxY() + 2;
        outside += !inside && image.getRGB(x, y) != Color.WHITE.getRGB() ? 1 : 0;
      }
    }
    return outside;
  }
}
