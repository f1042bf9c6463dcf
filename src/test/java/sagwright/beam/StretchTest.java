package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretchTest {
  private static final Stretch.Gentle ANY = (from, to) -> true;

  @Test
  void rootsAtBothEndsAreIntegratedToRounding() {
    List<Stretch> stretches =
        Stretch.between(0, 4, List.of(Kink.rootType(0), Kink.rootType(4)), ANY);
    double half = Stretch.integral(stretches, x -> Math.pow(x * (4 - x), 1.5));
    // ∫₀⁴ (x(4−x))^1.5 dx = 4⁴·B(5/2, 5/2) = 256·3π/128.
    assertEquals(6 * Math.PI, half, 1e-11);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-6, 1e-3, 0.5})
  void aRootJustOutsideIsClosedInOnStepByStep(double before) {
    List<Stretch> stretches = Stretch.between(0, 10, List.of(Kink.rootType(-before)), ANY);
    double expected = (Math.pow(10 + before, 2.5) - Math.pow(before, 2.5)) / 2.5;
    assertEquals(
        expected, Stretch.integral(stretches, x -> Math.pow(x + before, 1.5)), 1e-12 * expected);
  }

  @Test
  void kinksAtOnePlaceAreOne() {
    List<Kink> kinks = List.of(Kink.plain(5), Kink.rootType(5 + 1e-12), Kink.plain(5 - 1e-12));
    List<Stretch> stretches = Stretch.between(0, 10, kinks, ANY);
    List<Stretch> atRoots =
        stretches.stream().filter(stretch -> stretch.root() != Stretch.Root.NONE).toList();
    assertEquals(2, atRoots.size());
    assertEquals(Stretch.Root.AT_TO, atRoots.get(0).root());
    assertEquals(Stretch.Root.AT_FROM, atRoots.get(1).root());
    assertEquals(10, Stretch.integral(stretches, x -> 1), 1e-14);
  }

  @Test
  void stretchesFollowOneAnotherFromEndToEnd() {
    List<Stretch> stretches =
        Stretch.between(
            1, 9, List.of(Kink.plain(3), Kink.rootType(7)), (from, to) -> to - from < 0.9);
    assertEquals(1, stretches.get(0).fromMm());
    assertEquals(9, stretches.get(stretches.size() - 1).toMm());
    for (int i = 1; i < stretches.size(); i++) {
      assertEquals(stretches.get(i - 1).toMm(), stretches.get(i).fromMm());
      assertTrue(stretches.get(i).lengthMm() < 0.9);
    }
  }

  @Test
  void nothingLiesBetweenAPlaceAndItself() {
    assertTrue(Stretch.between(3, 3, List.of(), ANY).isEmpty());
  }
}
