package sagwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LetteringTest {
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  static Stream<Font> weights() {
    Lettering l = Lettering.load();
    return Stream.of(l.light(100), l.regular(100), l.semiBold(100), l.bold(100));
  }

  @ParameterizedTest
  @MethodSource("weights")
  void allFiguresAndTheFigureSpaceAreOfOneWidth(Font font) {
    double zero = width(font, "0");
    for (String figure : "1 2 3 4 5 6 7 8 9 \u2007".split(" ")) {
      assertThat(width(font, figure)).as("width of %s", figure).isEqualTo(zero);
    }
    assertThat(width(font, "\u2008")).as("punctuation space").isEqualTo(width(font, "."));
  }

  @ParameterizedTest
  @MethodSource("weights")
  void everySignThatTheScreensUseIsThere(Font font) {
    String signs = "₀₉°½¼¾⅛±≥≤−→✓×·–—“”’…äöüßÄéèçñøåæłžščřąęőűťžĳ²³µ€";
    assertThat(font.canDisplayUpTo(signs)).as("first missing sign").isEqualTo(-1);
  }

  private static double width(Font font, String text) {
    return font.getStringBounds(text, EXACT).getWidth();
  }
}
