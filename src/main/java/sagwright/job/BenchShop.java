package sagwright.job;

import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.grade.GradedForecast;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.grade.WordScale;
import sagwright.modulus.Shaft;
import sagwright.run.HandReadings;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderReader;
import sagwright.survey.Bow;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Grade;
import sagwright.workshop.Run;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** All that can be done at the bench of one workshop. Slow things: for the work thread. */
public final class BenchShop {
  /** A test that takes longer is ended. */
  public static final Duration LONGEST_TEST = Duration.ofMinutes(5);

  private static final int USUAL_RUNS_OF_SERIES = 3;

  private final Workshop workshop;
  private final SpeciesTable species;
  private final BenchPlace place;
  private final SafeLoad safeLoad;
  private final RecordTest recordTest;
  private final LayBlank layBlank;
  private final JustHandled justHandled;
  private final InstantSource clock;
  private final SurveyShaft survey;
  private volatile WordScale wordScale = WordScale.AT_FIRST;

  public BenchShop(
      Workshop workshop,
      SpeciesTable species,
      BenchPlace place,
      InstantSource clock,
      Executor work) {
    this.workshop = workshop;
    this.species = species;
    this.place = place;
    this.clock = clock;
    this.survey = new SurveyShaft(species);
    this.safeLoad = new SafeLoad(species, SafeStress.ASSUMED_SHARE);
    this.recordTest = new RecordTest(workshop, species, safeLoad, clock, work);
    this.layBlank = new LayBlank(workshop, species, safeLoad);
    this.justHandled = new JustHandled(workshop, layBlank, clock);
  }

  public BenchPlace place() {
    return place;
  }

  public RecordTest recordTest() {
    return recordTest;
  }

  public SetUp usualSetUp() {
    return WordScale.AT_FIRST.usual();
  }

  /** The shop's words, as they were set when a blank was laid last. */
  public WordScale wordScale() {
    return wordScale;
  }

  /** How sure the shop wants to be, as it is set now. */
  public Sureness sureness() throws WorkshopException {
    return new ShopSettings(workshop).sureness();
  }

  public SafeStress safeStress(Shaft shaft) {
    return safeLoad.safeStress(shaft);
  }

  /** Lays a blank on the bench. */
  public LaidBlank lay(String tag, SetUp setUp) throws WorkshopException {
    Calibration calibration = place.calibration();
    if (calibration == null) {
      throw new WorkshopException("the bench has not been calibrated yet: see Checks");
    }
    wordScale = new ShopSettings(workshop).wordScale();
    LaidBlank laid = layBlank.lay(tag, setUp, calibration);
    place.laid(laid);
    place.lookAgain();
    justHandled.laid(laid.blank());
    return laid;
  }

  public TestedRun tested(Run run) throws WorkshopException {
    return layBlank.tested(run);
  }

  /** An order by its number. */
  public TriedOrder order(String number) throws WorkshopException {
    WorkshopOrder stored = workshop.orders().require(number);
    try {
      return new TriedOrder(stored, OrderReader.read(stored.document()));
    } catch (BadDocumentException e) {
      throw new WorkshopException("order " + stored.number() + ": " + e.getMessage());
    }
  }

  /**
   * What the runs of a blank that count show together, first of all those at the set-up that it
   * lies on; empty for none.
   */
  public Optional<RunsTogether> together(LaidBlank laid) {
    return laid.runs().isEmpty()
        ? Optional.empty()
        : Optional.of(RunsTogether.of(survey, laid.runs(), laid.setUp().positions()));
  }

  /** What the runs make of the finished shaft; nothing is stored. */
  public GradedForecast forecast(RunsTogether together, LaidBlank laid, Order order)
      throws WorkshopException {
    return new ForecastShaft(species, sureness()).of(together, laid.before(), order);
  }

  /**
   * What comes of an order's finish plan in the laid blank, and what could be done about it.
   *
   * @param graded the forecast or the grade of the runs
   */
  public PlannedFinish plan(RunsTogether together, LaidBlank laid, GradedForecast graded)
      throws WorkshopException {
    return PlannedFinish.of(
        new PlannedFinish.InBlank(
            laid.blank().tag(), laid.shaft().taper(), PlannedFinish.Why.ON_BENCH),
        List.of(),
        together.wood(laid.shaft()),
        graded,
        new ShopSettings(workshop).buttBore());
  }

  /** How a blank's newest grade for an order differs from the one before it. */
  public Optional<GradeChange> lastChange(Blank blank, WorkshopOrder order)
      throws WorkshopException {
    List<Grade> grades =
        workshop.grades().of(blank).stream()
            .filter(grade -> grade.orderNumber().equals(order.number()))
            .toList();
    int n = grades.size();
    return n < 2
        ? Optional.empty()
        : Optional.of(GradeChange.between(workshop, blank, grades.get(n - 2), grades.get(n - 1)));
  }

  /** The same wood at other moistures. */
  public WoodInTheYear wood(RunsTogether together) {
    return WoodInTheYear.of(
        species, together.newest().sheet().shaft(), together.modulusMPa().value());
  }

  /** A run's modulus by random draws; takes up to some seconds. */
  public SecondOpinion secondOpinion(TestedRun run) {
    return SecondOpinion.of(run);
  }

  /** Guesses by hand before a test. */
  public GuessFirst guessFirst() {
    return new GuessFirst(workshop);
  }

  /** How many runs a series has. */
  public int runsOfSeries() throws WorkshopException {
    return workshop
        .settings()
        .get(Settings.RUNS_OF_SERIES)
        .map(Integer::parseInt)
        .orElse(USUAL_RUNS_OF_SERIES);
  }

  public void setRunsOfSeries(int runs) throws WorkshopException {
    workshop.settings().set(Settings.RUNS_OF_SERIES, String.valueOf(runs));
  }

  /** Keeps how far the laid blank is off straight, by rolling it past the gauge. */
  public Bow keepBow(LaidBlank laid, double[] turnDegrees, double[] readingMm)
      throws WorkshopException {
    Bow bow = new KeepBow(workshop).keep(laid, turnDegrees, readingMm);
    gradeAgain(laid.blank());
    return bow;
  }

  /** A run that no longer counts; it stays on the record. */
  public void setAside(Run run, String why) throws WorkshopException {
    workshop.runs().setAside(run, why);
  }

  /** A run that was set aside counts again. */
  public void countAgain(Run run) throws WorkshopException {
    workshop.runs().keep(run);
  }

  /**
   * Grades a blank and keeps the grade on its record; its grades for other orders are given again.
   */
  public GradeBlank.Graded grade(Blank blank, WorkshopOrder order)
      throws WorkshopException, PoorRunException {
    GradeBlank.Graded graded = new GradeBlank(workshop, species).grade(blank.tag(), order.number());
    gradeAgain(blank);
    return graded;
  }

  /** Something has changed that a blank's grades rest on. */
  public void gradeAgain(Blank blank) throws WorkshopException {
    new GradeAgain(workshop, species).of(blank);
  }

  /**
   * Why it may be another blank that lies there; empty where the result suits the one that is laid.
   *
   * @param before the blank as it was laid, before the run
   */
  public Optional<RightBlank.Doubt> doubt(TestedRun run, LaidBlank before)
      throws WorkshopException {
    return RightBlank.of(run, before, justHandled.others(before.blank()));
  }

  /** Moves a run that lay under the wrong blank; its trace stays. */
  public void move(TestedRun run, Blank to) throws WorkshopException {
    new MoveRun(workshop, species).move(run, to, "the result suited another blank's record");
    new GradeAgain(workshop, species).all(); // of the blank that it came from, too
  }

  public Run keepHandRead(LaidBlank laid, HandReadings pairs) throws WorkshopException {
    return new KeepHandRead(workshop, species).keep(laid.blank(), laid.before(), pairs);
  }

  /** How the bench's calibration stands, one line. */
  public String calibrationInWords() {
    Calibration calibration = place.calibration();
    if (place.isPractice()) {
      return "Practice bench: nothing here is real wood.";
    }
    if (calibration == null) {
      return "The bench has not been calibrated yet.";
    }
    String until = calibration.validUntil().toString().substring(0, 10);
    String holds =
        calibration.isValidAt(clock.instant())
            ? "Calibration holds until " + until + "."
            : "The calibration held until " + until + ": calibrate before you rely on it.";
    return (holds + "  " + place.provedInWords()).trim();
  }

  /** Takes the last action back that can be taken back, and says which. */
  public String undoLast() throws WorkshopException {
    return new TakeBack(workshop, species).last();
  }

  /** How many runs were cut off by a power failure or a crash, and are not closed yet. */
  public int cutOffRuns() throws WorkshopException {
    return workshop.cutOffRuns().count();
  }

  /** Closes them with what had been read by then. */
  public List<SalvageRuns.Salvaged> salvage() throws WorkshopException {
    return new SalvageRuns(workshop, species).all();
  }

  /** Whether any blank was written down yet. */
  public boolean hasBlanks() throws WorkshopException {
    return !workshop.blanks().all().isEmpty();
  }

  public boolean hasBlank(String tag) throws WorkshopException {
    return workshop.blanks().find(tag).isPresent();
  }
}
