package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.Calibration;
import sagwright.check.FrameCompliance;
import sagwright.check.GaugeSpring;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PointsReader;
import sagwright.job.DueCheck.Subject;
import sagwright.job.DueCheck.Urgency;
import sagwright.sheet.CalibrationReader;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.WorkshopException;

class KeepCalibrationTest {
  private static final LocalGravity GRAVITY = new LocalGravity(9.812);
  private static final Signature KM = new Signature("KM", 365);
  private static final Path LOAD_POINTS = Path.of("calibration", "load-points-example.csv");
  private static final Path GAUGE_POINTS = Path.of("calibration", "gauge-points-example.csv");

  @TempDir Path folder;
  private CheckedShop shop;

  @BeforeEach
  void open() throws WorkshopException {
    shop = new CheckedShop(folder);
  }

  @AfterEach
  void close() throws WorkshopException {
    shop.close();
  }

  private static GuidedPoints points(Path file, PointsReader reader) throws Exception {
    return new GuidedPoints(reader.read(Files.readString(file)));
  }

  private void keepLoad(Signature signature) throws Exception {
    GuidedPoints masses = points(LOAD_POINTS, PointsReader.ofMassesInG());
    LineCalibration line = LineCalibration.of(masses.points(GRAVITY::loadN));
    shop.keep.load(line, masses, GRAVITY, signature);
  }

  private void keepGauge(Signature signature) throws Exception {
    GuidedPoints blocks = points(GAUGE_POINTS, PointsReader.ofBlocks());
    shop.keep.gauge(LineCalibration.of(blocks.points(mm -> mm)), blocks, signature);
  }

  @Test
  void whatIsWalkedThroughIsWhatTheCommandMakesOfTheSamePoints() throws Exception {
    keepLoad(KM);
    keepGauge(KM);
    Path file = folder.resolve("calibration.json");
    CalibrateLoad load = new CalibrateLoad(Clock.systemUTC());
    load.writeInto(file, load.work(LOAD_POINTS, GRAVITY));
    CalibrateGauge gauge = new CalibrateGauge(Clock.systemUTC());
    gauge.writeInto(file, gauge.work(GAUGE_POINTS));

    Calibration byCommand = CalibrationReader.readFile(file);
    Calibration kept = shop.inForce.complete();
    assertEquals(byCommand.load(), kept.load());
    assertEquals(byCommand.gauge(), kept.gauge());
    assertEquals("KM", kept.by());
    assertEquals(365, kept.validDays());
  }

  @Test
  void noTestIsMadeByHalfACalibration() throws Exception {
    assertNull(shop.inForce.complete());
    keepGauge(KM);
    assertNull(shop.inForce.complete());
    assertEquals(Urgency.DUE, shop.due(Subject.LOAD).urgency());
    assertEquals(Urgency.GOOD, shop.due(Subject.GAUGE).urgency());
    keepLoad(KM);
    assertTrue(shop.inForce.inWords().startsWith("Calibration holds until"));
  }

  @Test
  void theWholeHoldsAsLongAsTheOlderOfLoadAndGauge() throws Exception {
    keepLoad(KM);
    shop.wait(Duration.ofDays(300));
    keepGauge(KM);
    assertTrue(shop.inForce.inWords().startsWith("Calibration holds until"));
    assertEquals(Urgency.GOOD, shop.due(Subject.LOAD).urgency());
    shop.wait(Duration.ofDays(50));
    assertEquals(Urgency.SOON, shop.due(Subject.LOAD).urgency());
    shop.wait(Duration.ofDays(50));
    assertTrue(shop.inForce.inWords().startsWith("Calibration held until"));
    assertEquals(Urgency.DUE, shop.due(Subject.LOAD).urgency());
    assertEquals(Urgency.GOOD, shop.due(Subject.GAUGE).urgency());
    keepLoad(KM);
    assertTrue(shop.inForce.inWords().startsWith("Calibration holds until"));
  }

  @Test
  void springAndFrameJoinWhatIsInForceAndTheNextLoadLeavesThem() throws Exception {
    List<GaugeSpring.Push> pushes =
        List.of(new GaugeSpring.Push(1, 60), new GaugeSpring.Push(11, 80));
    GaugeSpring spring = GaugeSpring.of(pushes, GRAVITY);
    assertThrows(WorkshopException.class, () -> shop.keep.spring(spring, pushes, KM));
    keepLoad(KM);
    keepGauge(KM);
    shop.keep.spring(spring, pushes, KM);
    Estimate compliance = new Estimate(0.0031, 0.0004);
    shop.keep.frame(
        new FrameCompliance(new Estimate(60, 0.1), compliance, List.of()), "bar-30", KM);
    keepLoad(new Signature("AB", 180));

    Calibration now = shop.inForce.complete();
    assertEquals(2 * GRAVITY.loadN(1), now.gauge().springNPerMm(), 1e-12);
    assertEquals(compliance.value(), now.frameComplianceMmPerN());
    assertEquals(compliance.standardUncertainty(), now.frameComplianceUncertaintyMmPerN());
    assertEquals("AB", now.by());
    assertTrue(shop.due(Subject.FRAME).standing().contains("KM"));
    assertEquals(5, shop.workshop.calibrations().all().size());
  }

  @Test
  void aFrameThatGivesLessThanNothingAndAnUnsignedPartAreRefused() throws Exception {
    keepLoad(KM);
    FrameCompliance less =
        new FrameCompliance(new Estimate(60, 0.1), new Estimate(-0.001, 0.0004), List.of());
    assertThrows(WorkshopException.class, () -> shop.keep.frame(less, "bar-30", KM));
    assertThrows(WorkshopException.class, () -> keepLoad(new Signature(" ", 365)));
    assertThrows(WorkshopException.class, () -> keepLoad(new Signature("KM", 0)));
    assertEquals(1, shop.workshop.calibrations().all().size());
  }

  @Test
  void anUndoneCalibrationGivesWayToTheOneBefore() throws Exception {
    keepLoad(KM);
    keepGauge(KM);
    keepLoad(new Signature("AB", 30));
    shop.workshop.actions().undoLast();
    shop.inForce.readAgain();
    assertEquals("KM", shop.inForce.complete().by());
  }

  @Test
  void aFileIsBroughtInAsItStandsAndAPoorOneIsNot() throws Exception {
    shop.keep.bringIn(Path.of("docs", "examples", "calibration.json"));
    Calibration file = CalibrationReader.readFile(Path.of("docs", "examples", "calibration.json"));
    assertEquals(file, shop.inForce.complete());
    Path bad = folder.resolve("bad.json");
    Files.writeString(bad, "{\"format\":\"sagwright-calibration/1\",\"made\":\"then\"}");
    WorkshopException e = assertThrows(WorkshopException.class, () -> shop.keep.bringIn(bad));
    assertTrue(e.getMessage().contains("made"), e.getMessage());
    assertThrows(WorkshopException.class, () -> shop.keep.bringIn(folder.resolve("none.json")));
    assertEquals(file, shop.inForce.complete());
  }

  @Test
  void pointsThatWereLeftAreThereAgain() throws Exception {
    CalibrationDrafts drafts = new CalibrationDrafts(shop.workshop);
    GuidedPoints masses = points(LOAD_POINTS, PointsReader.ofMassesInG());
    drafts.leave(CalibrationDrafts.Kind.LOAD, masses);
    drafts.gravity(GRAVITY);
    CalibrationDrafts again = new CalibrationDrafts(shop.workshop);
    assertEquals(masses, again.points(CalibrationDrafts.Kind.LOAD));
    assertEquals(GuidedPoints.NONE, again.points(CalibrationDrafts.Kind.GAUGE));
    assertEquals(GRAVITY, again.gravity().orElseThrow());
  }
}
