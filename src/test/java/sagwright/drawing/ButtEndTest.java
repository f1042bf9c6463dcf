package sagwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ButtEndTest {
  private static final int MARGIN = 40;
  private static final Rectangle2D AREA = new Rectangle2D.Double(MARGIN, MARGIN, 236, 186);

  @ParameterizedTest(name = "{0} runs, turned by {1}° each, lying at {2}°")
  @CsvSource({
    "0, 0, 0",
    "1, 0, 90",
    "2, 90, 90",
    "3, 60, 120",
    "4, 60, 180",
    "5, 60, 60",
    "8, 22.5, 157.5",
    "9, 20, 160",
    "12, 90, 270",
    "30, 0, 0",
    "30, 0, 180"
  })
  void staysInItsPlaceHoweverManyRunsThereAre(int count, double step, double now) {
    List<TurnedRun> runs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      runs.add(new TurnedRun(i + 1, i == count - 1 ? "" : "2.571", i * step % 360));
    }
    Style style = new Style(Palette.LIGHT, Lettering.load());
    BufferedImage image =
        new BufferedImage(
            (int) AREA.getWidth() + 2 * MARGIN,
            (int) AREA.getHeight() + 2 * MARGIN,
            BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    new ButtEnd(style).paint(g, AREA, now, runs);
    g.dispose();
    int outside = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        boolean isWhite = (image.getRGB(x, y) & 0xffffff) == 0xffffff;
        outside += isWhite || AREA.contains(x, y) ? 0 : 1;
      }
    }
    assertThat(outside).as("pixels drawn outside its place").isZero();
  }
}
