package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.drawing.FittedLine;
import sagwright.drawing.PlottedRun;
import sagwright.drawing.TurnedRun;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.WordScale;
import sagwright.job.GradeChange;
import sagwright.job.PlannedFinish;
import sagwright.job.RightBlank;
import sagwright.screen.PlanExample;
import sagwright.screen.ShopUnits;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.Blank;

/** An invented blank on the bench, at each moment of a test. Its figures hang together. */
public final class BenchExample {
  static final double MODULUS_MPA = 11_180;
  static final double RATIO = 14;
  static final double FRAME_MM_PER_N = 0.002;
  static final double LET_OFF_N = 20;
  public static final SetUp SET_UP = new SetUp(100, 1100, 600, 600, 90);
  public static final Taper TAPER =
      Taper.round(
          List.of(
              Station.round(0, 12.1),
              Station.round(200, 13.9),
              Station.round(400, 16.6),
              Station.round(600, 19.4),
              Station.round(800, 21.9),
              Station.round(1000, 24.4),
              Station.round(1200, 26.4),
              Station.round(1490, 29.6)),
          1490);

  private BenchExample() {}

  /** Nothing lies there. */
  public static BenchView empty() {
    return new BenchView(
        null,
        null,
        Phase.NO_BLANK,
        "",
        new BenchView.HeadReading(0, 0, 0),
        noCurves(),
        null,
        null,
        words(),
        new BenchView.Turns(0, List.of(), ""),
        "Stand aside of the shaft.  Eye protection on.",
        "80 readings a second, none lost.  Check rod 4 h ago: within 0.1 %.",
        null,
        List.of(),
        null);
  }

  /** Laid, not tested, no order. */
  public static BenchView ready() {
    BenchView e = empty();
    return new BenchView(
        laid(SET_UP.turnedBy(0)),
        null,
        Phase.READY,
        "",
        BenchView.HeadReading.NONE,
        noCurves(),
        null,
        null,
        words(),
        e.turns(),
        safety(),
        e.line(),
        null,
        List.of(),
        null);
  }

  /** The third run, under a load that is still rising. */
  public static BenchView loading(double loadN) {
    PlottedRun run = run(loadN);
    int last = run.loadN().length - 1;
    double load = run.loadN()[last];
    double mm = run.deflectionMm()[last];
    FittedLine line =
        loadN < 6 ? null : new FittedLine(benchStiffness(), -0.03, 4, Math.min(19, loadN - 1));
    return new BenchView(
        laid(SET_UP),
        new BenchView.Tried("R-0007", Ask.ofStiffness(SET_UP.turnedBy(0), 2.10, 5)),
        Phase.LOAD_SLOWLY,
        "to 20 N, then let off",
        new BenchView.HeadReading(load, mm, mm - FRAME_MM_PER_N * load),
        new BenchView.Curves(List.of(run), line, LET_OFF_N, LET_OFF_N / benchStiffness(), 20.6),
        answer(),
        forecast("25-014"),
        words(),
        new BenchView.Turns(
            90,
            List.of(
                new TurnedRun(1, "3.133", 0),
                new TurnedRun(2, "3.141", 90),
                new TurnedRun(3, "", 90)),
            "both ways agree within 0.3 %"),
        safety(),
        empty().line(),
        null,
        List.of(),
        null);
  }

  /** The same in another phase. */
  public static BenchView in(BenchView v, Phase phase, String detail) {
    return new BenchView(
        v.shaft(),
        v.order(),
        phase,
        detail,
        v.reading(),
        v.curves(),
        v.answer(),
        v.forecast(),
        v.words(),
        v.turns(),
        v.safety(),
        v.line(),
        v.question(),
        v.warnings(),
        null);
  }

  /** The same, the load off again. */
  public static BenchView loaded() {
    BenchView v = in(loading(20), Phase.DONE, "");
    return offAgain(
        v,
        v.forecast(),
        new BenchView.Turns(
            120,
            List.of(new TurnedRun(1, "3.133", 0), new TurnedRun(2, "3.160", 60)),
            "stiffer at 92° ± 6°, by 0.8 %"),
        null,
        ForecastViews.changed(v.forecast().finished()).stream().toList());
  }

  /** Done, four turns, and a result that does not suit the record. */
  public static BenchView questioned() {
    return offAgain(
        in(loading(20), Phase.DONE, "3.137 N/mm"),
        forecast("25-099"),
        new BenchView.Turns(
            180,
            List.of(
                new TurnedRun(1, "3.133", 0),
                new TurnedRun(2, "3.141", 90),
                new TurnedRun(3, "3.139", 180),
                new TurnedRun(4, "3.140", 270)),
            "four turns agree within 0.3 %"),
        DoubtWords.question(
            new RightBlank.Doubt(-7.0, 6.2, new RightBlank.Better(new Blank(7, "25-013"), 0.4))),
        List.of("the last station lies 110 mm from the butt end"));
  }

  private static BenchView offAgain(
      BenchView v,
      BenchView.Forecast forecast,
      BenchView.Turns turns,
      BenchView.Question question,
      List<String> warnings) {
    return new BenchView(
        v.shaft(),
        v.order(),
        v.phase(),
        v.shownDetail(),
        new BenchView.HeadReading(0.01, 0.00, 0),
        v.curves(),
        v.answer(),
        forecast,
        v.words(),
        turns,
        v.safety(),
        v.line(),
        question,
        warnings,
        null);
  }

  private static BenchView.Laid laid(SetUp setUp) {
    return new BenchView.Laid(
        "25-014",
        "European ash, near size, 355 g, 11.2 % moist",
        TAPER,
        setUp,
        RATIO,
        LET_OFF_N / benchStiffness() * 1.05,
        55);
  }

  private static String safety() {
    return "Safe load 55 N.  Stand aside of the shaft.  Eye protection on.";
  }

  private static BenchView.Answer answer() {
    return new BenchView.Answer(
        "So far, from runs 1 to 3",
        new Estimate(1 / (1 / benchStiffness() - FRAME_MM_PER_N), 0.006),
        new Estimate(MODULUS_MPA, 117),
        new Estimate(0.985 * MODULUS_MPA, 115),
        TrustExample.behind(),
        TrustExample.survey(TAPER));
  }

  /** By the real job, in a blank of the invented rack. */
  private static BenchView.Forecast forecast(String tag) {
    PlannedFinish planned = PlanExample.of(order(), tag);
    return ForecastViews.of(
        new FinishedCue(
            new PlannedFinish(
                planned.order(),
                new PlannedFinish.InBlank(
                    "25-014", planned.blank().taper(), PlannedFinish.Why.ON_BENCH),
                List.of(),
                planned.graded(),
                planned.planing(),
                planned.spliceEffects(),
                planned.lead(),
                planned.wanted()),
            new GradeChange(0.91, 0.97, "undecided", "meets", List.of("run 3 is 0.4 % softer"))),
        ShopUnits.METRIC);
  }

  private static Order order() {
    return new Order(
        "R-0007",
        "European ash",
        null,
        null,
        new FinishPlan(
            Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
            0.05,
            null,
            new Ferrule(9.5, 8, 8500),
            new Splice(1060, 4, 1120, 15_500, 0),
            List.of(new Weight(1180, 1300, 12, 11_340)),
            List.of(new Extra("joint", 740, 38))),
        new Ask(SET_UP.turnedBy(0), 2.10, 5, new Aim(556, 15.0), new Aim(415, 12.0)),
        List.of(Ask.ofStiffness(new SetUp(700, 1450, 1075, 1075, 0), 20.1, 8)));
  }

  /** Load over deflection as the bench shows it, frame in. */
  static double benchStiffness() {
    double perN = Flexibility.of(TAPER, SET_UP).perMm(RATIO) / MODULUS_MPA;
    return 1 / (perN + FRAME_MM_PER_N);
  }

  private static BenchView.Curves noCurves() {
    return new BenchView.Curves(List.of(), null, LET_OFF_N, 6.4, 20.6);
  }

  /** An invented shop's words. */
  public static WordScale words() {
    return new WordScale(
        SET_UP.turnedBy(0),
        List.of("supple", "easy", "middling", "firm", "stout"),
        List.of(1.7, 1.85, 2.0, 2.15, 2.3, 2.45));
  }

  private static PlottedRun run(double toN) {
    Random random = new Random(25_014);
    List<double[]> points = new ArrayList<>();
    for (double load = 0; load <= toN; load += 0.03) {
      double seating = 0.05 * (1 - Math.exp(-load / 1.5));
      points.add(
          new double[] {
            load / benchStiffness() + seating - 0.02 + 0.004 * random.nextGaussian(),
            load + 0.02 * random.nextGaussian()
          });
    }
    double[] mm = points.stream().mapToDouble(p -> p[0]).toArray();
    double[] n = points.stream().mapToDouble(p -> p[1]).toArray();
    return new PlottedRun(mm, n, PlottedRun.Kind.CURRENT);
  }
}
