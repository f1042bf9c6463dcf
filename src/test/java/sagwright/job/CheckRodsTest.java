package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SetUp;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.HeadIdentity;
import sagwright.bench.LineHealth;
import sagwright.bench.LineStatistics;
import sagwright.bench.LinkState;
import sagwright.check.CheckRod;
import sagwright.job.DueCheck.Subject;
import sagwright.job.DueCheck.Urgency;
import sagwright.run.HandReadings;
import sagwright.sheet.CalibrationReader;
import sagwright.sheet.SetUpDocument;
import sagwright.sheet.Sheet;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SafeStress;
import sagwright.workshop.Blank;
import sagwright.workshop.WorkshopException;

class CheckRodsTest {
  private static final SetUp SET_UP = new SetUp(100, 1100, 600, 600, 0);

  @TempDir Path folder;
  private CheckedShop shop;
  private Calibration calibration;

  @BeforeEach
  void open() throws Exception {
    shop = new CheckedShop(folder);
    shop.keep.bringIn(Path.of("docs", "examples", "calibration.json"));
    calibration = CalibrationReader.readFile(Path.of("docs", "examples", "calibration.json"));
    shop.rods.enter("rod-1", CheckedShop.ROD);
    shop.wait(Duration.ofHours(1));
  }

  @AfterEach
  void close() throws WorkshopException {
    shop.close();
  }

  private CheckRods.Kept rod() throws WorkshopException {
    return shop.rods.now().orElseThrow();
  }

  /** A run on the rod, read by hand, that shows it so many percent stiffer than its steel says. */
  private void test(double percentStiffer) throws WorkshopException {
    Blank blank = rod().blank();
    Sheet before =
        new BlankShaft(shop.workshop, CheckedShop.SPECIES)
            .onBench(blank, new SetUpDocument(SET_UP, null, null, null), calibration);
    double shaft = rod().rod().stiffnessNPerMm(SET_UP).value() * (1 + percentStiffer / 100);
    double mmPerN = 1 / shaft + calibration.frameComplianceMmPerN();
    double[] loadN = {0, 5, 10, 15, 20};
    double[] mm = new double[loadN.length];
    for (int i = 0; i < mm.length; i++) {
      mm[i] = loadN[i] * mmPerN;
    }
    new KeepHandRead(shop.workshop, CheckedShop.SPECIES)
        .keep(blank, before, new HandReadings(loadN, mm));
    shop.rodState.readAgain();
    shop.wait(Duration.ofDays(1));
  }

  @Test
  void theRodIsABlankOfItsOwnThatNobodyIsPromised() throws Exception {
    assertEquals(CheckedShop.ROD, rod().rod());
    assertFalse(shop.workshop.blanks().state(rod().blank()).isFree());
    shop.rods.enter(
        "rod-1", new CheckRod(1200, new Estimate(12.02, 0.004), new Estimate(206_000, 3000), 0.29));
    assertEquals(12.02, rod().rod().diameterMm().value());
    assertEquals(1, shop.workshop.blanks().all().size());
    assertThrows(
        WorkshopException.class,
        () -> shop.rods.enter("rod 1 of two", CheckedShop.ROD),
        "a tag with spaces");
  }

  @Test
  void anOrdinaryRunOnTheRodStandsOnItsChart() throws Exception {
    test(0.38);
    RodReading reading = shop.rodState.standing().newest();
    assertEquals(0.38, reading.differencePercent(), 1e-6);
    assertTrue(reading.noisePercent() > 0 && reading.noisePercent() < 0.5);
    assertFalse(shop.rodState.standing().isOut());
    assertTrue(
        shop.rodState.inWords().contains("24 h ago: within 0.4 % of what its steel says"),
        shop.rodState.inWords());
  }

  @Test
  void aRodThatDisagreesWithItsSteelIsOutBeforeThereIsAChart() throws Exception {
    test(9);
    assertTrue(shop.rodState.standing().isOut());
    assertTrue(shop.rodState.inWords().contains("out: 9.0 %"), shop.rodState.inWords());
    assertEquals(Urgency.OUT, shop.due.now().get(0).urgency());
  }

  @Test
  void aReadingBeyondTheLimitsIsOutAndSaysWhatToLookAt() throws Exception {
    for (double percent : new double[] {0.3, 0.1, 0.4, 0.2, 0.35, 0.15}) {
      test(percent);
    }
    assertFalse(shop.rodState.standing().isOut());
    assertTrue(shop.rodState.inWords().contains("within 0.1 %."), shop.rodState.inWords());
    test(-2);
    assertTrue(shop.rodState.standing().isOut());
    assertTrue(shop.due(Subject.ROD).next().contains("support"), shop.due(Subject.ROD).next());
  }

  @Test
  void theChartStartsAnewAfterACalibration() throws Exception {
    for (int day = 0; day < 6; day++) {
      test(0.1 * (day % 3));
    }
    assertEquals(0, shop.rodState.standing().from());
    shop.keep.bringIn(Path.of("docs", "examples", "calibration.json"));
    shop.rodState.readAgain();
    assertEquals(6, shop.rodState.standing().from());
    assertFalse(shop.rodState.standing().wasSeen());
    assertEquals(Urgency.DUE, shop.due(Subject.ROD).urgency());
  }

  @Test
  void aTypedReadingCountsAndASlipIsUndone() throws Exception {
    double own = rod().rod().stiffnessNPerMm(SET_UP).value();
    shop.rods.keepTyped(rod(), SET_UP, own * 1.002);
    shop.rods.keepTyped(rod(), SET_UP, own * 10);
    shop.workshop.actions().undoLast();
    shop.rodState.readAgain();
    assertEquals(1, shop.rodState.standing().readings().size());
    assertEquals(0.2, shop.rodState.standing().newest().differencePercent(), 1e-9);
    assertThrows(
        WorkshopException.class,
        () -> shop.rods.keepTyped(rod(), new SetUp(100, 1300, 600, 600, 0), own));
  }

  @Test
  void withoutARodTheNextStepIsSaid() throws Exception {
    shop.workshop.blanks().end(rod().blank(), "bent");
    shop.rodState.readAgain();
    assertEquals(Optional.empty(), shop.rods.now());
    assertTrue(shop.rodState.inWords().contains("Checks"));
    assertEquals(Urgency.ADVISED, shop.due(Subject.ROD).urgency());
  }

  @Test
  void aSteelRodMayBeLoadedFartherThanUnknownWood() throws Exception {
    SafeLoad safe = new SafeLoad(CheckedShop.SPECIES, SafeStress.ASSUMED_SHARE);
    Sheet before =
        new BlankShaft(shop.workshop, CheckedShop.SPECIES)
            .onBench(rod().blank(), new SetUpDocument(SET_UP, null, null, null), calibration);
    // 32·F·L/4/(π·d³) = 100 MPa for a round bar loaded in the middle
    double byHand = 100 * Math.PI * Math.pow(12, 3) / 32 * 4 / 1000;
    assertEquals(byHand, safe.limits(before, calibration).safeN(), 1e-6 * byHand);
    assertEquals(
        rod().rod().stiffnessNPerMm(SET_UP).value(), safe.expectedStiffnessNPerMm(before), 1e-9);
  }

  @Test
  void theFileForWhoeverHelpsTellsOfTheBenchAndOfNobody() throws Exception {
    test(0.4);
    shop.workshop.settings().set("initials", "KM");
    BenchSnapshot snapshot =
        new BenchSnapshot(
            LinkState.READING,
            "reading",
            new HeadIdentity("BENCH", "0042", "1.0"),
            null,
            80,
            LineStatistics.NONE,
            null,
            null);
    BenchHealthFile.Bench bench =
        new BenchHealthFile.Bench(
            snapshot,
            new LineHealth().report(calibration),
            false,
            shop.inForce.standing(),
            shop.rodState.standing());
    BenchHealthFile writer = new BenchHealthFile("Sagwright test", shop.clock);
    Path file = writer.write(folder, bench);
    String text = Files.readString(file);
    assertTrue(text.contains("\"differencePercent\":0.4"), text);
    for (String ofPeople : new String[] {"KM", "rod-1", "0042", folder.toString()}) {
      assertFalse(text.contains(ofPeople), ofPeople);
    }
    assertFalse(writer.write(folder, bench).equals(file), "a file is never overwritten");
    assertEquals(text, Files.readString(file));
  }
}
