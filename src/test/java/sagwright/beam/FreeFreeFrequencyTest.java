package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FreeFreeFrequencyTest {
  /** reference/formulas.md, 5.1: β₁ of cos β·cosh β = 1. */
  private static final double BETA = 4.730040744862704;

  /** A shaft of one material, solid round, straight between two ends. */
  private static FreeShaft cone(
      double tipMm, double buttMm, double lengthMm, double modulusMPa, double densityKgM3) {
    Taper taper =
        Taper.round(List.of(Station.round(0, tipMm), Station.round(lengthMm, buttMm)), lengthMm);
    return new FreeShaft(
        lengthMm,
        x -> modulusMPa * taper.secondMomentAt(x, 0),
        x -> densityKgM3 * 1e-6 * taper.areaAt(x),
        List.of(),
        List.of());
  }

  /** reference/formulas.md, 5.1: steel and wood rods. */
  @Test
  void uniformRodsRingAtTheirFrequencies() {
    assertEquals(
        111.67960050181, FreeFreeFrequency.hz(cone(12, 12, 700, 206000, 7850)), 1e-7 * 112);
    assertEquals(38.442980371732, FreeFreeFrequency.hz(cone(20, 20, 1400, 12000, 670)), 1e-7 * 38);
  }

  /** reference/formulas.md, 5.3: the bare tapered shaft. */
  @Test
  void aTaperedShaftRingsAtItsFrequency() {
    assertEquals(35.111519631806, FreeFreeFrequency.hz(cone(9.5, 29, 1473, 12000, 670)), 1e-7 * 35);
  }

  /** reference/data/freefree-taper.csv: Rayleigh–Ritz in 50 digits. */
  @ParameterizedTest
  @MethodSource("tapers")
  void linearTapersAgreeWithRayleighRitz(double taper, double lambda) {
    double length = 1000;
    double frequency = FreeFreeFrequency.hz(cone(20 * taper, 20, length, 12000, 670));
    double expected =
        lambda / (2 * Math.PI * length * length) * Math.sqrt(12000 * 20 * 20 / (16 * 670e-12));
    assertEquals(expected, frequency, 2e-7 * expected);
  }

  static Stream<Arguments> tapers() {
    return rows("freefree-taper.csv")
        .map(row -> row.split(","))
        .filter(row -> Double.parseDouble(row[0]) > 0)
        .map(row -> Arguments.of(Double.parseDouble(row[0]), Double.parseDouble(row[1])));
  }

  /**
   * reference/data/vpcs-sdll09.csv (AFNOR SDLL09/89, clamped and free). A shaft doubled about its
   * clamped end, with a mass there that will not move, swings as two such beams.
   */
  @ParameterizedTest
  @MethodSource("clampedCases")
  void publishedClampedBeamsAreHalvesOfAShaftThatIsHeldInTheMiddle(
      int number, double published, double recomputed) {
    double length = 1000;
    double clampedWidth = number == 4 ? 40 : 50;
    FreeShaft doubled =
        new FreeShaft(
            2 * length,
            x -> 2e5 * side(x, clampedWidth) * Math.pow(side(x, 40), 3) / 12,
            x -> 7800e-6 * side(x, clampedWidth) * side(x, 40),
            List.of(Kink.plain(length)),
            List.of(new PointMass(length, 1e11)));
    double frequency = FreeFreeFrequency.hz(doubled);
    assertEquals(recomputed, frequency, 1e-6 * recomputed);
    assertEquals(published, frequency, 4e-4 * published);
  }

  /** 10 mm at the free ends, a given side in the middle. */
  private static double side(double x, double middle) {
    return middle + (10 - middle) * Math.abs(x - 1000) / 1000;
  }

  static Stream<Arguments> clampedCases() {
    return rows("vpcs-sdll09.csv")
        .map(row -> row.split(","))
        .filter(row -> row[1].equals("1"))
        .map(
            row ->
                Arguments.of(
                    Integer.parseInt(row[0]),
                    Double.parseDouble(row[3]),
                    Double.parseDouble(row[5])));
  }

  /** Ends too heavy to move: β = π, the rod on two pins. */
  @Test
  void endsLoadedHeavilySwingAsIfPinned() {
    FreeShaft rod = cone(12, 12, 700, 206000, 7850);
    FreeShaft loaded =
        new FreeShaft(
            700,
            rod.bendingStiffnessNMm2(),
            rod.massPerMmG(),
            List.of(),
            List.of(new PointMass(0, 1e10), new PointMass(700, 1e10)));
    double bare = FreeFreeFrequency.hz(rod);
    double pinned = bare * Math.PI * Math.PI / (BETA * BETA);
    assertEquals(pinned, FreeFreeFrequency.hz(loaded), 1e-6 * pinned);
  }

  /** A mass at a node of the motion does nothing; one in the middle slows it. */
  @Test
  void aMassAtANodeOfTheMotionDoesAlmostNothing() {
    FreeShaft rod = cone(12, 12, 700, 206000, 7850);
    double bare = FreeFreeFrequency.hz(rod);
    // Nodes at 0.224157522702358 L (reference/formulas.md, 5.1); both, so that the mass stays even.
    double node = 0.224157522702358 * 700;
    double atNodes =
        FreeFreeFrequency.hz(
            new FreeShaft(
                700,
                rod.bendingStiffnessNMm2(),
                rod.massPerMmG(),
                List.of(),
                List.of(new PointMass(node, 20), new PointMass(700 - node, 20))));
    assertEquals(bare, atNodes, 1e-6 * bare);
    double inTheMiddle =
        FreeFreeFrequency.hz(
            new FreeShaft(
                700,
                rod.bendingStiffnessNMm2(),
                rod.massPerMmG(),
                List.of(),
                List.of(new PointMass(350, 40))));
    assertTrue(inTheMiddle < 0.97 * bare);
  }

  @Test
  void kinksCloseToOneAnotherDoNotSpoilTheDigits() {
    FreeShaft rod = cone(9.5, 29, 1473, 12000, 670);
    List<Kink> crowd = Stream.iterate(700.0, x -> x + 1e-3).limit(40).map(Kink::rootType).toList();
    FreeShaft crowded =
        new FreeShaft(1473, rod.bendingStiffnessNMm2(), rod.massPerMmG(), crowd, List.of());
    assertEquals(35.111519631806, FreeFreeFrequency.hz(crowded), 1e-7 * 35);
  }

  @Test
  void aShaftWithoutMassIsRefused() {
    FreeShaft massless = new FreeShaft(700, x -> 1e8, x -> 0, List.of(), List.of());
    assertThrows(IllegalArgumentException.class, () -> FreeFreeFrequency.hz(massless));
  }

  private static Stream<String> rows(String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                FreeFreeFrequencyTest.class.getResourceAsStream("/reference/data/" + file),
                StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#") && Character.isDigit(line.charAt(0)))
          .toList()
          .stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
