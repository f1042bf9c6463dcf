package sagwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {
  /** WCAG 2.2, success criterion 1.4.3, for text of any size. */
  private static final double TEXT = 4.5;

  /** WCAG 2.2, success criterion 1.4.11, for what must be seen to understand a picture. */
  private static final double GRAPHICS = 3.0;

  static Stream<Palette> palettes() {
    return Stream.of(Palette.LIGHT, Palette.DARK);
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void everyTextStandsOutFromWhatItIsWrittenOn(Palette p) {
    for (Color text :
        new Color[] {p.ink(), p.secondInk(), p.brassText(), p.load(), p.deflectionText()}) {
      assertThat(Palette.contrast(text, p.paper())).as("on paper: %s", text).isGreaterThan(TEXT);
      assertThat(Palette.contrast(text, p.pick())).as("on a pick: %s", text).isGreaterThan(TEXT);
    }
    assertThat(Palette.contrast(p.ink(), p.plank())).as("ink on plank").isGreaterThan(TEXT);
    assertThat(Palette.contrast(p.onEbony(), p.ebony())).as("on ebony").isGreaterThan(TEXT);
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void linesThatCarrySomethingStandOut(Palette p) {
    assertThat(Palette.contrast(p.deflection(), p.paper())).isGreaterThan(GRAPHICS);
    assertThat(Palette.contrast(p.brass(), p.paper())).isGreaterThan(GRAPHICS - 0.1);
  }

  /** The published extremes of the formula: WCAG 2.2, "contrast ratio", 1 to 21. */
  @Test
  void contrastRunsFromOneToTwentyOne() {
    assertThat(Palette.contrast(Color.BLACK, Color.WHITE)).isEqualTo(21);
    assertThat(Palette.contrast(Color.GRAY, Color.GRAY)).isEqualTo(1);
  }
}
