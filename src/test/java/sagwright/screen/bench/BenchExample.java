package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.drawing.FittedLine;
import sagwright.drawing.PlottedRun;
import sagwright.drawing.TurnedRun;
import sagwright.grade.Ask;
import sagwright.grade.Verdict;
import sagwright.grade.WordScale;
import sagwright.uncertainty.Estimate;

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
        List.of());
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
        List.of());
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
        forecast(2.08, 0.036, Verdict.MEETS, 0.987),
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
        List.of());
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
        v.warnings());
  }

  /** The same, the load off again. */
  public static BenchView loaded() {
    BenchView v = in(loading(20), Phase.DONE, "");
    return new BenchView(
        v.shaft(),
        v.order(),
        v.phase(),
        v.shownDetail(),
        new BenchView.HeadReading(0.01, 0.00, 0),
        v.curves(),
        v.answer(),
        v.forecast(),
        v.words(),
        new BenchView.Turns(
            120,
            List.of(new TurnedRun(1, "3.133", 0), new TurnedRun(2, "3.160", 60)),
            "stiffer at 92° ± 6°, by 0.8 %"),
        v.safety(),
        v.line(),
        null,
        List.of());
  }

  /** Done, four turns, and a result that does not suit the record. */
  public static BenchView questioned() {
    BenchView v = in(loading(20), Phase.DONE, "3.137 N/mm");
    return new BenchView(
        v.shaft(),
        v.order(),
        v.phase(),
        v.shownDetail(),
        new BenchView.HeadReading(0.01, 0.00, 0),
        v.curves(),
        v.answer(),
        forecast(2.31, 0.036, Verdict.STIFFER, 0.005),
        v.words(),
        new BenchView.Turns(
            180,
            List.of(
                new TurnedRun(1, "3.133", 0),
                new TurnedRun(2, "3.141", 90),
                new TurnedRun(3, "3.139", 180),
                new TurnedRun(4, "3.140", 270)),
            "four turns agree within 0.3 %"),
        v.safety(),
        v.line(),
        new BenchView.Question(
            "Is this the right blank? It is 7 % softer than on 3 March.",
            List.of(
                new BenchView.Offer(BenchActions.Choice.KEEP, "yes, it is 25-014"),
                new BenchView.Offer(BenchActions.Choice.MOVE, "no, it is another"),
                new BenchView.Offer(BenchActions.Choice.LATER, "later"))),
        List.of("the last station lies 110 mm from the butt end"));
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

  private static BenchView.Forecast forecast(
      double stiffness, double uncertainty, Verdict verdict, double chance) {
    return new BenchView.Forecast(
        new Estimate(stiffness, uncertainty), verdict, chance, 0.95, "inside the ask");
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
