package sagwright.example;

import java.time.InstantSource;
import java.util.List;
import java.util.Random;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.check.CheckRod;
import sagwright.check.FrameCompliance;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PoorPointsException;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRods;
import sagwright.job.GradeAgain;
import sagwright.job.KeepCalibration;
import sagwright.job.Signature;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * How the example's bench was calibrated and proved: yearly by masses and blocks, weekly by rod.
 */
final class ExampleChecks {
  static final String ROD = "ROD-1";
  static final double TRUE_ROD_MODULUS_MPA = 205_300;

  private static final int[] CALIBRATED_DAYS_AGO = {1230, 866, 570, 270};
  private static final int FIRST_CHECK_DAYS_AGO = 262;
  private static final int DAYS_BETWEEN_CHECKS = 7;

  /** A support that had worked loose, found by the rod and tightened. */
  static final int LOOSE_DAYS_AGO = 73;

  private static final double LOOSE_SHARE = 0.021;
  private static final LocalGravity GRAVITY = LocalGravity.at(new LocalGravity.Place(52.5, 60));
  private static final double ROD_MM = 1200;
  private static final double STATED_ROD_DIAMETER_MM = 12;
  private static final double TRUE_ROD_DIAMETER_MM = 12.003;

  private final Workshop workshop;
  private final CheckRods rods;
  private final KeepCalibration keep;
  private final ExampleBench bench;
  private final SetUp usual;

  ExampleChecks(
      Workshop workshop,
      SpeciesTable species,
      CalibrationInForce inForce,
      InstantSource clock,
      ExampleBench bench,
      SetUp usual) {
    this.workshop = workshop;
    this.rods = new CheckRods(workshop, species);
    this.keep = new KeepCalibration(workshop, inForce, clock, new GradeAgain(workshop, species));
    this.bench = bench;
    this.usual = usual;
  }

  void write(Diary diary) {
    for (int daysAgo : CALIBRATED_DAYS_AGO) {
      diary.on(daysAgo, 0.05, ExampleWorkshop.MAKER, () -> calibrate(daysAgo));
    }
    diary.on(
        CALIBRATED_DAYS_AGO[0],
        0.1,
        ExampleWorkshop.MAKER,
        () ->
            rods.enter(
                ROD,
                new CheckRod(
                    ROD_MM,
                    new Estimate(STATED_ROD_DIAMETER_MM, 0.005),
                    CheckRod.ASSUMED_STEEL_MODULUS_MPA,
                    CheckRod.ASSUMED_STEEL_POISSON_RATIO)));
    for (int ago = FIRST_CHECK_DAYS_AGO; ago > 0; ago -= DAYS_BETWEEN_CHECKS) {
      double looseness = ago == LOOSE_DAYS_AGO ? LOOSE_SHARE : 0;
      diary.on(ago, 0.02, ExampleWorkshop.MAKER, () -> check(looseness));
    }
    diary.on(
        LOOSE_DAYS_AGO,
        0.05,
        ExampleWorkshop.MAKER,
        () ->
            workshop
                .notes()
                .add(rod(), "far support had worked loose; nut tightened, rod laid again"));
    diary.on(LOOSE_DAYS_AGO, 0.06, ExampleWorkshop.MAKER, () -> check(0));
  }

  private Blank rod() throws WorkshopException {
    return workshop.blanks().require(ROD);
  }

  private void check(double looseness) throws WorkshopException {
    Taper taper =
        Taper.round(
            List.of(
                Station.round(0, TRUE_ROD_DIAMETER_MM),
                Station.round(ROD_MM, TRUE_ROD_DIAMETER_MM)),
            ROD_MM);
    bench.test(
        new ExampleBench.Lying(
            rod(), new ExampleShape(taper, null), moisture -> TRUE_ROD_MODULUS_MPA, looseness),
        usual,
        null);
  }

  private void calibrate(int daysAgo) throws WorkshopException {
    Random random = ExampleRack.randomOf("calibration " + daysAgo);
    Signature signature = new Signature(ExampleWorkshop.MAKER, Signature.USUAL_VALID_DAYS);
    try {
      GuidedPoints masses =
          rounds(
              500,
              8,
              g ->
                  GRAVITY.loadN(g) / ExampleWorkshop.TRUE_INSTRUMENTS.load().newtonPerCount()
                      + 180 * random.nextGaussian());
      keep.load(LineCalibration.of(masses.points(GRAVITY::loadN)), masses, GRAVITY, signature);
      GuidedPoints blocks =
          rounds(
              2.5,
              10,
              mm ->
                  mm / ExampleWorkshop.TRUE_INSTRUMENTS.gauge().mmPerStep()
                      + 1.5 * random.nextGaussian());
      keep.gauge(LineCalibration.of(blocks.points(mm -> mm)), blocks, signature);
    } catch (PoorPointsException e) {
      throw new WorkshopException("the example's calibration: " + e.getMessage());
    }
    double uncertainty = 2e-5;
    double found =
        ExampleWorkshop.TRUE_INSTRUMENTS.frameComplianceMmPerN()
            + uncertainty * random.nextGaussian();
    keep.frame(
        new FrameCompliance(new Estimate(85, 0.2), new Estimate(found, uncertainty), List.of()),
        "bar 25 x 25",
        signature);
  }

  private interface Shown {
    double of(double applied);
  }

  /** Two rounds, up and down. */
  private static GuidedPoints rounds(double step, int steps, Shown shown) {
    GuidedPoints points = GuidedPoints.NONE;
    for (int round = 0; round < 2; round++) {
      for (int i = 0; i <= steps; i++) {
        points = points.plus(i * step, Math.round(shown.of(i * step)));
      }
      for (int i = steps - 1; i >= 0; i--) {
        points = points.plus(i * step, Math.round(shown.of(i * step)));
      }
    }
    return points;
  }
}
