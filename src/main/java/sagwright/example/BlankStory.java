package sagwright.example;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import sagwright.beam.SetUp;
import sagwright.finish.FinishedMass;
import sagwright.job.GradeBlank;
import sagwright.run.PoorRunException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** What one blank has been through, from the square to where it stands. */
final class BlankStory {
  private static final String MAKER = ExampleWorkshop.MAKER;
  private static final int WEIGHINGS = 3;
  private static final int WEIGHINGS_WHEN_DRY = 1;
  private static final int DAYS_BETWEEN_WEIGHINGS = 28;

  /** Wet as it comes from the sawmill, and as it ends in the shop's air; so fast in between. */
  private static final double WET_PERCENT = 19;

  private static final double DRY_PERCENT = 10.8;
  private static final double DRYING_DAYS = 150;

  private static final List<String> LOOKS =
      List.of(
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          "even arrows",
          "pale",
          "pin knot near the butt",
          "a brown streak");

  private final Tools tools;
  private final ExampleBlank blank;
  private final Optional<ExampleOrder> order;
  private final double hour;

  /** What every story is entered with. */
  record Tools(
      Workshop workshop,
      SpeciesTable species,
      SheetReader reader,
      ExampleBench bench,
      ExampleGuesses guesses,
      GradeBlank grade,
      SetUp usual) {}

  BlankStory(Tools tools, ExampleBlank blank, Optional<ExampleOrder> order) {
    this.tools = tools;
    this.blank = blank;
    this.order = order;
    this.hour = ExampleRack.randomOf("hour of " + blank.tag()).nextDouble();
  }

  void tell(Diary diary) {
    for (Stage stage : Stage.values()) {
      if (stage.isReachedBy(blank.stage())) {
        int daysAgo = blank.daysAgo(stage);
        diary.on(daysAgo, 0.5 * hour, MAKER, () -> measure(stage, daysAgo, ""));
        weigh(diary, stage, daysAgo);
        if (isTestedAt(stage)) {
          test(diary, stage);
        }
      }
    }
    order.ifPresent(o -> serve(diary, o));
  }

  /** In its first years the shop put nothing on the bench before it was near size. */
  private boolean isTestedAt(Stage stage) {
    return stage == Stage.SECOND_TURNING
        ? blank.daysAgo(stage) < ExampleWorkshop.TESTING_EARLY_SINCE_DAYS_AGO
        : stage.compareTo(Stage.SECOND_TURNING) > 0;
  }

  private void weigh(Diary diary, Stage stage, int since) {
    int weighings = stage.compareTo(Stage.NEAR_SIZE) < 0 ? WEIGHINGS : WEIGHINGS_WHEN_DRY;
    for (int i = 1; stage.compareTo(Stage.NEAR_SIZE) <= 0 && i <= weighings; i++) {
      int daysAgo = since - i * DAYS_BETWEEN_WEIGHINGS;
      if (daysAgo > 0) {
        diary.on(
            daysAgo,
            0.6 + 0.1 * hour,
            MAKER,
            () -> measure(stage, daysAgo, weeksAfter(since - daysAgo)));
      }
    }
  }

  private static String weeksAfter(int days) {
    return days / 7 + " weeks after";
  }

  private void test(Diary diary, Stage stage) {
    int daysAgo = blank.testedDaysAgo(stage);
    int runs = stage == Stage.NEAR_SIZE ? 2 + Math.floorMod(blank.tag().hashCode(), 2) : 1;
    series(diary, stage, daysAgo, runs);
  }

  private void series(Diary diary, Stage stage, int daysAgo, int runs) {
    String hand = ExampleGuesses.hand(blank.tag() + stage + daysAgo);
    for (int i = 0; i < runs; i++) {
      double turnDegrees = 180.0 * i / runs;
      boolean isFirst = i == 0;
      diary.on(
          daysAgo,
          0.5 + 0.4 * hour + 0.004 * i,
          hand,
          () -> {
            Run run = tools.bench().test(lying(stage), tools.usual().turnedBy(turnDegrees), null);
            if (isFirst && daysAgo < ExampleWorkshop.GUESSING_SINCE_DAYS_AGO) {
              tools.guesses().guess(run, hand);
            }
          });
    }
  }

  /** Tested again for the order, graded, promised; in the end delivered. */
  private void serve(Diary diary, ExampleOrder its) {
    int planed = blank.daysAgo(Stage.PLANED);
    series(diary, Stage.NEAR_SIZE, planed + 20, 2);
    diary.on(planed + 19, 0.3, MAKER, () -> grade(its));
    diary.on(
        planed + 19, 0.31, MAKER, () -> tools.workshop().promises().make(entered(), stored(its)));
    if (blank.stage() == Stage.FINISHED_CUE) {
      int delivered = Math.max(1, blank.daysAgo(Stage.FINISHED_CUE) - 9);
      diary.on(
          delivered, 0.8, MAKER, () -> tools.workshop().orders().end(stored(its), "delivered"));
    }
  }

  private void grade(ExampleOrder its) throws WorkshopException {
    try {
      tools.grade().grade(blank.tag(), its.number());
    } catch (PoorRunException e) {
      throw new WorkshopException(e.getMessage());
    }
  }

  private WorkshopOrder stored(ExampleOrder its) throws WorkshopException {
    return tools.workshop().orders().require(its.number());
  }

  private Blank entered() throws WorkshopException {
    return tools.workshop().blanks().require(blank.tag());
  }

  /** The blank on the bench as it truly is. */
  ExampleBench.Lying lying(Stage stage) throws WorkshopException {
    return new ExampleBench.Lying(entered(), shape(stage), blank.wood()::modulusMPa, 0);
  }

  /** To a tenth of a percent, as the meter shows it. */
  private double moisturePercent(int daysAgo) {
    double days = blank.boughtDaysAgo() - daysAgo;
    double percent = DRY_PERCENT + (WET_PERCENT - DRY_PERCENT) * Math.exp(-days / DRYING_DAYS);
    return Math.round(10 * percent) / 10.0;
  }

  private ExampleShape shape(Stage stage) {
    boolean isPlaned = stage.compareTo(Stage.PLANED) >= 0;
    return isPlaned
        ? ExampleShape.planed(
            blank.tag(), order.orElseThrow().order().finish(), stage == Stage.FINISHED_CUE)
        : ExampleShape.of(blank, stage);
  }

  private double massG(Stage stage, double moisturePercent) {
    double density = blank.wood().densityKgM3(moisturePercent);
    double massG =
        stage == Stage.FINISHED_CUE
            ? new FinishedMass(order.orElseThrow().order().finish(), density).total().massG()
            : shape(stage).taper().volumeMm3() * density * 1e-6;
    return Math.round(10 * massG) / 10.0;
  }

  /** The first time a blank is entered, afterwards measured anew. */
  private void measure(Stage stage, int daysAgo, String why) throws WorkshopException {
    Sheet sheet = sheet(stage, daysAgo);
    if (stage == Stage.SQUARE && why.isEmpty()) {
      tools.workshop().blanks().enter(sheet);
    } else {
      boolean isNewlyRough = stage == Stage.ROUGHED && why.isEmpty(); // now its grain is seen
      tools
          .workshop()
          .blanks()
          .addCaliperEntry(
              entered(),
              sheet,
              isNewlyRough ? grain() : Grain.UNSEEN,
              why.isEmpty() ? stage.done() : why);
    }
  }

  private Grain grain() {
    Random random = ExampleRack.randomOf("grain of " + blank.tag());
    double lines = Math.round(2 * (9 + 3.5 * random.nextGaussian())) / 2.0;
    double slope = random.nextDouble();
    Grain.RunOut runOut = Grain.RunOut.STRAIGHT;
    if (slope > 0.75) {
      runOut = slope > 0.95 ? Grain.RunOut.RUNS_OUT : Grain.RunOut.SLIGHT;
    }
    String looks = LOOKS.get(random.nextInt(LOOKS.size()));
    return new Grain(Math.max(3, lines), runOut, looks.isEmpty() ? null : looks);
  }

  private Sheet sheet(Stage stage, int daysAgo) throws WorkshopException {
    double moisture = moisturePercent(daysAgo);
    return new ExampleSheet(
            blank.tag(),
            blank.wood().species().name(),
            stage.words(),
            shape(stage),
            massG(stage, moisture),
            moisture)
        .read(tools.reader());
  }
}
