package sagwright.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlexibilityTest {
  private static final double E = 12000;

  private static Taper uniform(double diameterMm, double lengthMm) {
    return linear(diameterMm, diameterMm, lengthMm);
  }

  private static Taper linear(double fromMm, double toMm, double lengthMm) {
    return Taper.round(List.of(Station.round(0, fromMm), Station.round(lengthMm, toMm)), lengthMm);
  }

  private static void assertRelative(double expected, double actual, double relative) {
    assertEquals(expected, actual, Math.abs(expected) * relative);
  }

  /**
   * Textbook closed forms of the uniform beam, w = P·b·x·(L²−b²−x²)/(6EIL) for x ≤ a (AISC and
   * Roark tables), and k·P·min(c,g)·(L−max(c,g))/(L·G·A) for shear; r = 14.
   */
  @ParameterizedTest
  @CsvSource({
    "500, 500, 1.70562138944504, 0.00286544393426766",
    "400, 650, 1.37063734855803, 0.00160464860318989",
    "650, 400, 1.37063734855803, 0.00160464860318989"
  })
  void uniformBeamWithLoadAndGaugeAtUnlikePlaces(
      double load, double gauge, double bending, double shear) {
    Flexibility f = Flexibility.of(uniform(12, 1000), new SetUp(0, 1000, load, gauge, 0));
    assertRelative(bending, f.bendingPerMm() / E, 1e-13);
    assertRelative(shear, 14 * f.shearPerMm() / E, 1e-13);
  }

  /** Steel check rod d 12, L 1000, E 206 000, ν 0.29, hence r = 2·(1+ν) = 2.58. */
  @Test
  void steelCheckRod() {
    Flexibility f = Flexibility.of(uniform(12, 1000), new SetUp(0, 1000, 500, 500, 0));
    assertRelative(10.0616429987451, 206000 / f.perMm(2.58), 1e-13);
    assertRelative(10.0647580834175, 206000 / f.bendingPerMm(), 1e-13);
  }

  /**
   * Tapered round beams, closed form of two cone cantilevers (Gere's P·L³/(3EI)·(dt/df)³) confirmed
   * by quadrature in 30 digits.
   */
  @Test
  void taperedRoundBeams() throws IOException {
    int cases = 0;
    for (String line :
        Files.readAllLines(Path.of("src/test/resources/reference/data/tapered-beam.csv"))) {
      if (line.startsWith("#") || line.startsWith("dA")) {
        continue;
      }
      double[] v = Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
      Flexibility f = Flexibility.of(linear(v[0], v[1], v[2]), new SetUp(0, v[2], v[3], v[3], 0));
      assertRelative(v[4], f.bendingPerMm() / E, 1e-13);
      assertRelative(v[5], 14 * f.shearPerMm() / E, 1e-13);
      assertRelative(v[6], E / f.perMm(14), 1e-13);
      cases++;
    }
    assertEquals(5, cases);
  }

  @Test
  void taperWithLoadAndGaugeAtUnlikePlaces() {
    Flexibility f = Flexibility.of(linear(10, 20, 1000), new SetUp(0, 1000, 400, 650, 0));
    assertRelative(0.622376162377577, f.bendingPerMm() / E, 1e-13);
    assertRelative(0.00119535901141522, 14 * f.shearPerMm() / E, 1e-13);
  }

  /** Ellipse stations, by quadrature in 30 digits (formulas.md 4.3 of the reference folder). */
  @Test
  void ellipseStationsStraightBetween() {
    List<Station> two = List.of(new Station(0, 12.50, 12.48), new Station(1490, 31, 31));
    Flexibility f =
        Flexibility.of(
            new Taper(SectionShape.ELLIPSE, two, 1490), new SetUp(100, 1100, 600, 600, 0));
    assertRelative(2968.78995965553, f.bendingPerMm(), 1e-13);
    assertRelative(13.7859476874343, 14 * f.shearPerMm(), 1e-13);
    assertRelative(7286.06688796002, f.perMm(14) / (1 / 2.431 - 0.0020), 1e-13);

    List<Station> four =
        List.of(
            new Station(0, 12.50, 12.48),
            new Station(400, 17, 17.1),
            new Station(900, 23.6, 23.5),
            new Station(1490, 31, 31));
    Flexibility g =
        Flexibility.of(
            new Taper(SectionShape.ELLIPSE, four, 1490), new SetUp(100, 1100, 600, 500, 0));
    assertRelative(3212.17836440077, g.bendingPerMm(), 1e-13);
    assertRelative(3226.26879732943, g.perMm(16), 1e-13);
  }

  /** Rectangle, centre load, shear in: ASTM D198's numbers, E 13219.5457673778 with G 800. */
  @Test
  void rectangleWithShear() {
    Taper square =
        new Taper(
            SectionShape.RECTANGLE, List.of(Station.round(0, 20), Station.round(280, 20)), 280);
    Flexibility f = Flexibility.of(square, new SetUp(0, 280, 140, 140, 0));
    double modulus = 13219.5457673778;
    assertRelative(2.0 / 700, (f.bendingPerMm() + modulus / 800 * f.shearPerMm()) / modulus, 1e-13);
    assertRelative(12005, f.bendingPerMm() / (2.0 / 700), 1e-13);
  }

  /** AFNOR/VPCS guide 1990, SSLL02: evenly loaded I-beam with shear, printed 1.2593 mm. */
  @Test
  void publishedShearBenchmarkBySummingPointLoads() {
    // The same I and the same shear area A/2.42 with a rectangle of our own proportions: a section
    // of depth h and width w has I = w·h³/12 and shear area w·h/1.2.
    double secondMoment = 2810e-8 * 1e12;
    double shearArea = 31e-4 * 1e6 / 2.42;
    double depth = Math.sqrt(12 * secondMoment / (1.2 * shearArea));
    double width = 1.2 * shearArea / depth;
    Taper beam =
        new Taper(
            SectionShape.RECTANGLE,
            List.of(new Station(0, depth, width), new Station(1440, depth, width)),
            1440);
    double ratio = 2 * (1 + 0.3);
    int strips = 1440;
    double sum = 0;
    for (int i = 0; i < strips; i++) {
      double at = (i + 0.5) * 1440 / strips;
      sum += Flexibility.of(beam, new SetUp(0, 1440, at, 720, 0)).perMm(ratio);
    }
    double deflection = sum * (1e5 / 1000) * (1440.0 / strips) / 2e5;
    assertEquals(1.2593, deflection, 5e-5);
    assertRelative(1.25925971668006, deflection, 1e-6);
  }

  @Test
  void maxwellReciprocityOnRandomShafts() {
    Random random = new Random(7);
    for (int i = 0; i < 200; i++) {
      Taper taper = randomTaper(random);
      double turn = 360 * random.nextDouble();
      double load = 200 + 700 * random.nextDouble();
      double gauge = 200 + 700 * random.nextDouble();
      double there = Flexibility.of(taper, new SetUp(100, 1000, load, gauge, turn)).perMm(14);
      double back = Flexibility.of(taper, new SetUp(100, 1000, gauge, load, turn)).perMm(14);
      assertRelative(there, back, 1e-12);
    }
  }

  /** A quarter turn exchanges depth and width. */
  @Test
  void aQuarterTurnExchangesTheAxes() {
    Random random = new Random(8);
    Taper taper = randomTaper(random);
    List<Station> exchanged =
        taper.stations().stream().map(s -> new Station(s.xMm(), s.widthMm(), s.depthMm())).toList();
    Taper other = new Taper(taper.shape(), exchanged, taper.lengthMm());
    assertRelative(
        Flexibility.of(taper, new SetUp(100, 1000, 600, 500, 90)).perMm(14),
        Flexibility.of(other, new SetUp(100, 1000, 600, 500, 0)).perMm(14),
        1e-13);
  }

  @Test
  void gradientAgreesWithDifferences() {
    Random random = new Random(9);
    for (int round = 0; round < 20; round++) {
      Taper taper = randomTaper(random);
      SetUp setUp = new SetUp(60, 1050, 620, 480, 30 * round);
      FlexibilityGradient gradient = FlexibilityGradient.of(taper, setUp);
      for (int i = 0; i < taper.stationCount(); i++) {
        double step = 1e-4;
        double byDepth =
            (Flexibility.of(nudged(taper, i, step, 0), setUp).perMm(14)
                    - Flexibility.of(nudged(taper, i, -step, 0), setUp).perMm(14))
                / (2 * step);
        double byWidth =
            (Flexibility.of(nudged(taper, i, 0, step), setUp).perMm(14)
                    - Flexibility.of(nudged(taper, i, 0, -step), setUp).perMm(14))
                / (2 * step);
        assertEquals(byDepth, gradient.byDepth(i, 14), 1e-4);
        assertEquals(byWidth, gradient.byWidth(i, 14), 1e-4);
      }
    }
  }

  @Test
  void nodesSumToTheSameFlexibility() {
    Taper taper = linear(9, 40, 1500);
    SetUp setUp = new SetUp(100, 1400, 700, 650, 0);
    FlexibilityNodes nodes = FlexibilityNodes.of(taper, setUp, 300, 900);
    Flexibility f = Flexibility.of(taper, setUp);
    assertRelative(f.bendingPerMm(), Arrays.stream(nodes.bendingPerMm()).sum(), 1e-13);
    assertRelative(f.shearPerMm(), Arrays.stream(nodes.shearPerMm()).sum(), 1e-13);
  }

  private static Taper nudged(Taper taper, int station, double depth, double width) {
    List<Station> stations = new ArrayList<>(taper.stations());
    Station s = stations.get(station);
    stations.set(station, new Station(s.xMm(), s.depthMm() + depth, s.widthMm() + width));
    return new Taper(taper.shape(), stations, taper.lengthMm());
  }

  private static Taper randomTaper(Random random) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double d = 12 + 3 * i + 2 * random.nextDouble();
      stations.add(new Station(50 + 200 * i, d, d * (0.95 + 0.1 * random.nextDouble())));
    }
    return new Taper(SectionShape.ELLIPSE, stations, 1150);
  }
}
