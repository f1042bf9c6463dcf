package sagwright.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sagwright.beam.SectionShape;
import sagwright.beam.Splice;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.FinishPlan;

/**
 * The true outline of an example blank, and what calipers make of it.
 *
 * @param splice null for a shaft of one wood
 */
record ExampleShape(Taper taper, Splice splice) {
  private static final double BLANK_MM = 1490;
  private static final double SQUARE_MM = 36;
  private static final double TURNED_TOO_THIN_MM = -0.1;
  private static final int STATIONS = 9;

  /** One standard uncertainty of a caliper reading, half of its variance common to all. */
  static final double CALIPER_MM = 0.02;

  /** What a plan that is made often looks like, without its cut. */
  private static double usualDiameterMm(double xMm) {
    return 9.6 + 19.4 * xMm / BLANK_MM - 0.35 * Math.sin(Math.PI * xMm / BLANK_MM);
  }

  /** A blank before it is planed. */
  static ExampleShape of(ExampleBlank blank, Stage stage) {
    Random random = ExampleRack.randomOf("shape of " + blank.tag() + " as " + stage);
    if (stage == Stage.SQUARE) {
      List<Station> stations = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        stations.add(
            new Station(
                i * BLANK_MM / 2,
                SQUARE_MM + 0.4 * random.nextGaussian(),
                SQUARE_MM + 0.4 * random.nextGaussian()));
      }
      return new ExampleShape(new Taper(SectionShape.RECTANGLE, stations, BLANK_MM), null);
    }
    double over = oversizeMm(stage, random);
    if (stage == Stage.NEAR_SIZE && !blank.isForAnOrder() && random.nextInt(12) == 0) {
      over = TURNED_TOO_THIN_MM;
    }
    double phase = 6 * random.nextDouble();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double x = i * BLANK_MM / (STATIONS - 1);
      double d = usualDiameterMm(x) + over + 0.18 * Math.sin(x / 210 + phase);
      double oval = 0.03 * random.nextGaussian();
      stations.add(new Station(x, d + oval, d - oval));
    }
    return new ExampleShape(Taper.round(stations, BLANK_MM), null);
  }

  /** How much thicker than the usual plan. */
  private static double oversizeMm(Stage stage, Random random) {
    return switch (stage) {
      case ROUGHED -> 7 + random.nextDouble();
      case SECOND_TURNING -> 3.2 + 0.8 * random.nextDouble();
      default -> 0.8 + 1.2 * random.nextDouble();
    };
  }

  /** Planed to a plan: round, within what planing leaves. */
  static ExampleShape planed(String tag, FinishPlan plan, boolean isSpliced) {
    Random random = ExampleRack.randomOf("planing of " + tag);
    double off = 0.04 * random.nextGaussian();
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double x = i * plan.lengthMm() / (STATIONS - 1);
      stations.add(Station.round(x, plan.diameterAt(x) + off));
    }
    return new ExampleShape(
        Taper.round(stations, plan.lengthMm()), isSpliced ? plan.splice() : null);
  }

  SplicedTaper spliced() {
    return new SplicedTaper(taper, splice);
  }

  /** What the calipers read, to a hundredth of a millimetre. */
  List<Station> read(Random random) {
    double each = CALIPER_MM * Math.sqrt(0.5);
    double common = each * random.nextGaussian();
    return taper.stations().stream()
        .map(
            s ->
                new Station(
                    s.xMm(),
                    hundredths(s.depthMm() + common + each * random.nextGaussian()),
                    hundredths(s.widthMm() + common + each * random.nextGaussian())))
        .toList();
  }

  private static double hundredths(double mm) {
    return Math.round(100 * mm) / 100.0;
  }
}
