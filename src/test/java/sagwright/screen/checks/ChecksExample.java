package sagwright.screen.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LineHealth;
import sagwright.bench.LoadCalibration;
import sagwright.bench.Reading;
import sagwright.bench.SettledCounts;
import sagwright.check.BadPointsException;
import sagwright.check.CalibrationPoint;
import sagwright.check.ChartBaseline;
import sagwright.check.CheckRod;
import sagwright.check.ControlChart;
import sagwright.check.FrameCompliance;
import sagwright.check.GaugeSpring;
import sagwright.check.GuidedPoints;
import sagwright.check.LineCalibration;
import sagwright.check.LocalGravity;
import sagwright.check.PointsReader;
import sagwright.check.PoorPointsException;
import sagwright.job.CalibrationDrafts.Kind;
import sagwright.job.CheckRods;
import sagwright.job.DueCheck;
import sagwright.job.DueCheck.Subject;
import sagwright.job.DueCheck.Urgency;
import sagwright.job.RodReading;
import sagwright.job.RodStanding;
import sagwright.job.Signature;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.Blank;

/** An invented bench for pictures and window tests. */
public final class ChecksExample {
  private static final LocalGravity GRAVITY = new LocalGravity(9.812);
  private static final Calibration CALIBRATION =
      new Calibration(
          Instant.parse("2026-03-02T09:00:00Z"),
          365,
          "KM",
          new LoadCalibration(2.5e-5, 0.02, 0.004, 50),
          new GaugeCalibration(0.001, 0.01, 0.001, 25, 0.02),
          0.002,
          0.0002);

  private ChecksExample() {}

  public static ChecksScreen screen(ChecksView view) {
    return new ChecksScreen(new Mailbox<>(view), new Idle());
  }

  /** A bench in its first hour: nothing is calibrated, nothing plugged in. */
  public static ChecksView empty() {
    return new ChecksView(
        List.of(
            new DueCheck(
                Subject.LOAD,
                Urgency.DUE,
                "never calibrated: no test without it",
                "hang known masses, up and down again"),
            new DueCheck(
                Subject.GAUGE,
                Urgency.DUE,
                "never calibrated: no test without it",
                "lay gauge blocks under the stem"),
            new DueCheck(
                Subject.ROD,
                Urgency.ADVISED,
                RodStanding.NO_ROD.inWords(),
                "enter a ground steel rod"),
            new DueCheck(
                Subject.SPRING,
                Urgency.ADVISED,
                "not measured: taken as 0",
                "push the stem onto a letter balance"),
            new DueCheck(
                Subject.FRAME,
                Urgency.ADVISED,
                "not measured: 0.002 mm/N is taken",
                "test a stout steel bar")),
        ChecksView.Line.NONE,
        ChecksView.Line.NONE,
        Optional.empty(),
        null,
        RodStanding.NO_ROD,
        ChecksView.Health.NONE,
        "",
        "");
  }

  /** A bench in use: the load is being calibrated, the rod is in. */
  public static ChecksView inUse() {
    return of(rod(0), health(), line("load-points-example.csv", Kind.LOAD, 19), null);
  }

  /** The same bench with a rod that has come out soft, and a bar that was tested. */
  public static ChecksView out() {
    FrameCompliance frame =
        new FrameCompliance(new Estimate(61.2, 0.2), new Estimate(0.00231, 0.00019), List.of());
    return of(rod(-1.1), health(), ChecksView.Line.NONE, new ChecksView.Frame("bar-30", frame));
  }

  private static ChecksView of(
      RodStanding rod, ChecksView.Health health, ChecksView.Line load, ChecksView.Frame frame) {
    DueCheck ofRod =
        new DueCheck(
            Subject.ROD,
            rod.isOut() ? Urgency.OUT : Urgency.GOOD,
            rod.inWords() + (rod.isOut() ? "" : ", 4 h ago"),
            rod.lookAt());
    return new ChecksView(
        List.of(
            ofRod,
            new DueCheck(
                Subject.LOAD,
                Urgency.SOON,
                "class 0.5, 9 Dec 2025 by KM, holds until 9 Dec 2026",
                "hang known masses, up and down again"),
            new DueCheck(
                Subject.GAUGE,
                Urgency.GOOD,
                "class 0.5, 2 Mar 2026 by KM, holds until 2 Mar 2027",
                ""),
            new DueCheck(Subject.SPRING, Urgency.GOOD, "2 Mar 2026 by KM", ""),
            new DueCheck(Subject.FRAME, Urgency.GOOD, "3 Mar 2026 by AB", "")),
        load,
        line("gauge-points-example.csv", Kind.GAUGE, 11),
        Optional.of(GRAVITY),
        frame,
        rod,
        health,
        "KM",
        "calibrated the bench");
  }

  private static ChecksView.Line line(String file, Kind kind, int most) {
    try {
      PointsReader reader =
          kind == Kind.LOAD ? PointsReader.ofMassesInG() : PointsReader.ofBlocks();
      List<CalibrationPoint> all = reader.read(Files.readString(Path.of("calibration", file)));
      GuidedPoints taken = new GuidedPoints(all.subList(0, Math.min(most, all.size())));
      List<CalibrationPoint> points = taken.points(kind == Kind.LOAD ? GRAVITY::loadN : mm -> mm);
      return new ChecksView.Line(taken, points, LineCalibration.of(points));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (BadPointsException | PoorPointsException e) {
      throw new IllegalStateException(e);
    }
  }

  private static RodStanding rod(double lastPercent) {
    Random random = new Random(12);
    int n = 24;
    int from = 6;
    Instant first = Instant.parse("2026-10-26T08:30:00Z");
    List<RodReading> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double usual = i < from ? 0.75 : 0.42;
      double last = i > n - 3 ? lastPercent * (i - n + 3) / 2 : 0;
      double percent = usual + 0.06 * random.nextGaussian() + last;
      Estimate shown = new Estimate(206_000 * (1 + percent / 100), 900);
      Instant at = first.plus(Duration.ofDays(i + i / 5 * 2L));
      readings.add(new RodReading(at, shown, 0.05, percent, "run " + (100 + i)));
    }
    double[] charted =
        readings.subList(from, n).stream().mapToDouble(RodReading::differencePercent).toArray();
    ControlChart chart =
        ControlChart.of(ChartBaseline.of(Arrays.copyOf(charted, 10), 0.05), charted);
    CheckRod rod =
        new CheckRod(
            1200,
            new Estimate(12, 0.0026),
            CheckRod.ASSUMED_STEEL_MODULUS_MPA,
            CheckRod.ASSUMED_STEEL_POISSON_RATIO);
    return new RodStanding(
        new CheckRods.Kept(new Blank(1, "rod-1"), rod, first), readings, from, chart);
  }

  private static ChecksView.Health health() {
    LineHealth health = new LineHealth();
    Random random = new Random(3);
    for (int i = 0; i < 60 * 80; i++) {
      double hum = 0.004 * Math.sin(2 * Math.PI * 50 * i / 80.0);
      int counts = (int) ((hum + 0.0055 * random.nextGaussian()) / 2.5e-5) + 48_213;
      Long steps = i % 4 == 0 ? (Long) Math.round(1207 + 0.7 * random.nextGaussian()) : null;
      health.reading(new Reading(i, i * 12_500L, counts, steps, 0), i * 12_500L);
    }
    return new ChecksView.Health(
        health.report(CALIBRATION), false, "80 readings a second from bench head 0042", null);
  }

  /** Does nothing; the head shows a settled load. */
  public static class Idle implements ChecksActions {
    @Override
    public Live live() {
      return new Live(
          new SettledCounts(
              new SettledCounts.Channel(1_186_486.4, 41, 160, true),
              new SettledCounts.Channel(7501.2, 0.6, 40, true)),
          true,
          "80 readings a second");
    }

    @Override
    public void lookAgain() {}

    @Override
    public void lookAtHealth() {}

    @Override
    public void apply(Kind kind, double known) {}

    @Override
    public void take(Kind kind, double known, Double reading, Reply reply) {}

    @Override
    public void takeBack(Kind kind) {}

    @Override
    public void beginAnew(Kind kind) {}

    @Override
    public void setGravity(LocalGravity gravity, Reply reply) {}

    @Override
    public void keepLine(Kind kind, Signature signature, Reply reply) {}

    @Override
    public void keepSpring(List<GaugeSpring.Push> pushes, Signature signature, Reply reply) {}

    @Override
    public void workFrame(String bar, Estimate modulusMPa, Reply reply) {}

    @Override
    public void keepFrame(Signature signature, Reply reply) {}

    @Override
    public void enterRod(String tag, CheckRod rod, Reply reply) {}

    @Override
    public void typeRod(double shownNPerMm, Reply reply) {}

    @Override
    public void layRod() {}

    @Override
    public void bringIn(String file, Reply reply) {}

    @Override
    public void writeHealthFile(FileReply reply) {}

    @Override
    public void undo(Reply reply) {}
  }
}
