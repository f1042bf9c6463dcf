package sagwright.example;

import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import sagwright.beam.SetUp;
import sagwright.beam.SplicedFlexibility;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.Ending;
import sagwright.bench.LineStatistics;
import sagwright.bench.LinkState;
import sagwright.bench.RecordedRun;
import sagwright.bench.TestPlan;
import sagwright.bench.TestWalk;
import sagwright.bench.WireReader;
import sagwright.bench.practice.PracticeHead;
import sagwright.bench.practice.PracticeOptions;
import sagwright.job.BlankShaft;
import sagwright.job.CalibrationInForce;
import sagwright.job.CloseRun;
import sagwright.job.KeepHandRead;
import sagwright.job.SafeLoad;
import sagwright.run.HandReadings;
import sagwright.sheet.CalibrationWriter;
import sagwright.sheet.SetUpDocument;
import sagwright.sheet.Sheet;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.RunJournal;
import sagwright.workshop.RunStart;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/**
 * The bench of the example workshop: the practice bench, in a time of its own, with instruments
 * that are truly a little off their calibration and supports that are never quite where they are
 * said to be. A run goes the way of every run: its bytes to the journal, then worked out.
 */
final class ExampleBench {
  /** One standard uncertainty of where supports, load and gauge stand, as sheets take it. */
  private static final double POSITION_MM = 0.5;

  private static final Duration FOREVER = Duration.ofMinutes(2);
  private static final byte[] BEGIN = {'I', 'N', 'I', 'T', '\n'};

  private final Workshop workshop;
  private final ExampleClock clock;
  private final CalibrationInForce inForce;
  private final BlankShaft shafts;
  private final SafeLoad safeLoad;
  private final CloseRun closeRun;
  private final KeepHandRead handRead;

  ExampleBench(
      Workshop workshop, SpeciesTable species, ExampleClock clock, CalibrationInForce inForce) {
    this.workshop = workshop;
    this.clock = clock;
    this.inForce = inForce;
    this.shafts = new BlankShaft(workshop, species);
    this.safeLoad = new SafeLoad(species, SafeStress.ASSUMED_SHARE);
    this.closeRun = new CloseRun(workshop, species);
    this.handRead = new KeepHandRead(workshop, species);
  }

  /**
   * What lies on the bench.
   *
   * @param shape as it truly is
   * @param modulus of the shaft wood, as it truly is
   * @param looseness of the bench: so much of the bend again as it ought to be; 0 for a sound bench
   */
  record Lying(Blank blank, ExampleShape shape, TrueModulus modulus, double looseness) {}

  /** What a wood truly is at the moisture that the meter showed, null where none was read. */
  interface TrueModulus {
    double atMPa(Double moisturePercent);
  }

  /**
   * One whole test.
   *
   * @param order that it is tried for, null for none
   */
  Run test(Lying lying, SetUp setUp, WorkshopOrder order) throws WorkshopException {
    return test(lying, setUp, order, Double.POSITIVE_INFINITY);
  }

  /** A test that is broken off once the load has come to so many N. */
  Run brokenOff(Lying lying, SetUp setUp, double atN) throws WorkshopException {
    return test(lying, setUp, null, atN);
  }

  private Run test(Lying lying, SetUp setUp, WorkshopOrder order, double breakOffN)
      throws WorkshopException {
    Calibration calibration = inForce.complete();
    Sheet before = before(lying.blank(), setUp, calibration);
    RunStart start =
        new RunStart(
            lying.blank(),
            clock.instant(),
            before.json(),
            CalibrationWriter.write(calibration),
            safeLoad.limits(before, calibration),
            order);
    RunJournal journal = workshop.runs().start(start);
    Random random = randomOfThisTest(lying.blank());
    double mmPerN = mmPerN(lying, before, random);
    TestWalk walk = new TestWalk(new TestPlan(calibration, start.limits()));
    try {
      play(mmPerN, random.nextLong(), journal, walk, breakOffN);
    } catch (IOException | InterruptedException e) {
      journal.close();
      throw new WorkshopException("the example's bench stumbled: " + e.getMessage());
    }
    RecordedRun recorded = walk.run();
    return closeRun.close(start, journal, recorded);
  }

  /** A run read by hand: masses hung, a dial read to a hundredth of a millimetre. */
  Run readByHand(Lying lying, SetUp setUp) throws WorkshopException {
    Sheet before = before(lying.blank(), setUp, inForce.complete());
    Random random = randomOfThisTest(lying.blank());
    double mmPerN = mmPerN(lying, before, random);
    int pairs = 7;
    double[] loadN = new double[pairs];
    double[] deflectionMm = new double[pairs];
    for (int i = 0; i < pairs; i++) {
      loadN[i] = i * 0.25 * 9.81;
      double mm = 1.2 + loadN[i] * mmPerN + 0.004 * random.nextGaussian();
      deflectionMm[i] = Math.round(100 * mm) / 100.0;
    }
    return handRead.keep(lying.blank(), before, new HandReadings(loadN, deflectionMm));
  }

  private Sheet before(Blank blank, SetUp setUp, Calibration calibration) throws WorkshopException {
    return shafts.onBench(blank, new SetUpDocument(setUp, null, null, null), calibration);
  }

  private Random randomOfThisTest(Blank blank) {
    return ExampleRack.randomOf("test of " + blank.tag() + " at " + clock.instant().toString());
  }

  private static double mmPerN(Lying lying, Sheet before, Random random) {
    SetUp setUp = before.setUp().positions();
    SetUp real =
        new SetUp(
            setUp.supportAMm() + POSITION_MM * random.nextGaussian(),
            setUp.supportBMm() + POSITION_MM * random.nextGaussian(),
            setUp.loadMm() + POSITION_MM * random.nextGaussian(),
            setUp.gaugeMm() + POSITION_MM * random.nextGaussian(),
            setUp.turnDegrees());
    double shaft =
        SplicedFlexibility.of(lying.shape().spliced(), real)
            .mmPerN(
                lying.modulus().atMPa(before.shaft().moisturePercent()), before.ratio().value());
    return shaft * (1 + lying.looseness())
        + ExampleWorkshop.TRUE_INSTRUMENTS.frameComplianceMmPerN();
  }

  /** The head's line, read as a session reads it, but in a time that takes none. */
  private static void play(
      double mmPerN, long seed, RunJournal journal, TestWalk walk, double breakOffN)
      throws IOException, InterruptedException {
    PracticeHead head =
        new PracticeHead(
            ExampleWorkshop.TRUE_INSTRUMENTS,
            PracticeOptions.BELIEVABLE.withSeed(seed),
            new HeadTime());
    head.lay(mmPerN);
    WireReader reader = WireReader.fromLineStart(walk);
    try (ByteLine line = head.open()) {
      line.write(BEGIN);
      byte[] bytes = new byte[WireReader.MOST_KEPT_TOGETHER];
      while (!walk.isOver()) {
        int count = line.read(bytes, FOREVER);
        journal.append(Arrays.copyOf(bytes, count));
        reader.accept(bytes, count);
        head.accept(snapshot(walk));
        if (walk.snapshot().loadN() > breakOffN) {
          walk.end(Ending.BROKEN_OFF);
        }
      }
    }
  }

  private static BenchSnapshot snapshot(TestWalk walk) {
    return new BenchSnapshot(
        LinkState.READING, "", null, null, 0, LineStatistics.NONE, null, walk.snapshot());
  }
}
