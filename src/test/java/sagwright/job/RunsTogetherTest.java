package sagwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.Flexibility;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.modulus.Shaft;
import sagwright.run.HandReadings;
import sagwright.sheet.CalibrationReader;
import sagwright.sheet.OrderReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.survey.Bow;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Runs on an invented blank: the readings are drawn from the beam of docs/contract.md, section 2.
 */
class RunsTogetherTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final double FRAME = 0.002;
  private static final SetUp USUAL = new SetUp(100, 1100, 600, 600, 0);
  private static final String SHAFT =
      "{\"format\":\"sagwright-sheet/1\",\"shaft\":{\"tag\":\"25-014\",\"species\":\"European"
          + " ash\",\"lengthMm\":1490,\"massG\":405,\"moisturePercent\":10,\"stations\":["
          + "{\"xMm\":0,\"depthMm\":12.5,\"widthMm\":12.5},"
          + "{\"xMm\":600,\"depthMm\":20,\"widthMm\":20},"
          + "{\"xMm\":1490,\"depthMm\":31,\"widthMm\":31}]},\"modulusToShearRatio\":14}";

  private static final String ORDER =
      "{\"format\":\"sagwright-order/1\",\"order\":\"R-1\",\"finish\":{\"lengthMm\":1473,"
          + "\"taper\":[{\"xMm\":0,\"diameterMm\":9.5},{\"xMm\":1473,\"diameterMm\":29}]},"
          + "\"ask\":{\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,"
          + "\"gaugeMm\":600},\"stiffnessNPerMm\":2.25,\"tolerancePercent\":5}}";

  @TempDir Path folder;
  private Workshop workshop;
  private Blank blank;
  private LayBlank lay;
  private Calibration calibration;

  @BeforeEach
  void open() throws Exception {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
    blank = workshop.blanks().enter(new SheetReader(SPECIES).read(SHAFT));
    lay = new LayBlank(workshop, SPECIES, new SafeLoad(SPECIES, SafeStress.ASSUMED_SHARE));
    calibration =
        CalibrationReader.requireComplete(
            CalibrationReader.read(
                "{\"format\":\"sagwright-calibration/1\",\"made\":\"2026-03-02T09:00:00Z\","
                    + "\"validDays\":365,\"by\":\"T\",\"load\":{\"newtonPerCount\":2.5e-5,"
                    + "\"scaleUncertaintyPercent\":0.1,\"uncertaintyN\":0.02,\"greatestN\":50},"
                    + "\"gauge\":{\"mmPerStep\":0.001,\"scaleUncertaintyPercent\":0.05,"
                    + "\"uncertaintyMm\":0.005,\"greatestMm\":25,\"springNPerMm\":0},"
                    + "\"frameComplianceMmPerN\":0.002,\"frameComplianceUncertaintyMmPerN\":0}"));
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private LaidBlank laid(SetUp at) throws WorkshopException {
    return lay.lay(blank.tag(), at, calibration);
  }

  /** A run that shows this modulus exactly. */
  private Run run(SetUp at, double modulusMPa) throws WorkshopException {
    LaidBlank laid = laid(at);
    double perN = Flexibility.of(laid.shaft().taper(), at).perMm(14) / modulusMPa + FRAME;
    int n = 9;
    double[] loads = new double[n];
    double[] mm = new double[n];
    for (int i = 0; i < n; i++) {
      loads[i] = 2 * i;
      mm[i] = 2 * i * perN;
    }
    return new KeepHandRead(workshop, SPECIES)
        .keep(blank, laid.before(), new HandReadings(loads, mm));
  }

  private RunsTogether together() throws WorkshopException {
    return RunsTogether.of(new SurveyShaft(SPECIES), lay.runs(blank));
  }

  @Test
  void theRepeatsAreThoseOfTheSetUpThatIsAskedFor() throws Exception {
    SetUp elsewhere = new SetUp(200, 1300, 750, 750, 0);
    run(USUAL, 12_000);
    run(USUAL.turnedBy(90), 12_030);
    Run newest = run(elsewhere, 11_900);
    assertThat(together().newest().run().id()).isEqualTo(newest.id());
    RunsTogether asUsual =
        RunsTogether.of(new SurveyShaft(SPECIES), lay.runs(blank), USUAL.turnedBy(60));
    assertThat(asUsual.runs()).hasSize(3);
    assertThat(asUsual.repeats()).hasSize(2);
    assertThat(asUsual.newest().setUp()).isEqualTo(USUAL.turnedBy(90));
    LaidBlank laid = laid(USUAL.turnedBy(60));
    assertThat(laid.runsHere()).hasSize(2);
    assertThat(laid.latestHere().orElseThrow().setUp()).isEqualTo(USUAL.turnedBy(90));
  }

  @Test
  void aSlipOfThePenIsQuestionedByTheWoodsDensity() throws Exception {
    assertThat(LikelyShaft.doubt(laid(USUAL).shaft(), laid(USUAL).stage())).isEmpty();
    Blank slipped =
        workshop
            .blanks()
            .enter(
                new SheetReader(SPECIES)
                    .read(SHAFT.replace("25-014", "25-015").replace("31", "3")));
    Shaft shaft = lay.lay(slipped.tag(), USUAL, calibration).shaft();
    assertThat(LikelyShaft.doubt(shaft, "roughed").orElseThrow())
        .matches("mass and diameters make this wood \\d{4} kg/m³, which is too dense: .*");
  }

  @Test
  void theMeanOfASeriesKnowsWhatIsCommonToItsRuns() throws Exception {
    run(USUAL, 12_000);
    run(USUAL.turnedBy(60), 12_030);
    run(USUAL.turnedBy(120), 11_970);
    RunsTogether together = together();
    assertThat(together.repeats()).hasSize(3);
    assertThat(together.modulusMPa().value()).isCloseTo(12_000, within(1.0));
    double one = together.newest().evaluation().modulusStdUncertaintyMPa();
    double mean = together.modulusMPa().standardUncertainty();
    assertThat(mean).isLessThan(one).isGreaterThan(one / Math.sqrt(3));
    assertThat(together.stiffnessNPerMm().value())
        .isCloseTo(
            12_000 / Flexibility.of(together.newest().shaft().taper(), USUAL).perMm(14),
            within(1e-3));
  }

  @Test
  void aRunThatStandsOutIsNamedAndIsNotInTheSeriesMean() throws Exception {
    run(USUAL, 12_000);
    run(USUAL, 12_900);
    run(USUAL, 12_010);
    run(USUAL, 11_990);
    RunsTogether together = together();
    assertThat(together.standingOut()).containsExactly(together.runs().get(1));
    assertThat(together.whyItStandsOut(together.runs().get(1))).contains("7.5 %");
    assertThat(together.modulusMPa().value()).isCloseTo(12_000, within(1.0));
  }

  @Test
  void severalSetUpsMakeASurveyAndItsModulusIsTheForecasts() throws Exception {
    run(USUAL, 12_000);
    run(new SetUp(50, 450, 250, 250, 0), 10_000);
    run(new SetUp(900, 1450, 1175, 1175, 0), 14_000);
    run(new SetUp(400, 1100, 750, 750, 0), 12_900);
    run(new SetUp(50, 750, 400, 400, 0), 11_000);
    RunsTogether together = together();
    assertThat(together.survey().runs()).hasSize(5);
    assertThat(together.wood(together.newest().shaft()).modulusMPa().variesAlong()).isTrue();
    assertThat(together.series()).isNull();
    assertThat(together.next()).isNotEmpty();
  }

  @Test
  void runsOnTheShaftAsItWasBeforeTurningDoNotCount() throws Exception {
    run(USUAL, 12_000);
    Sheet turned =
        new SheetReader(SPECIES).read(SHAFT.replace("\"depthMm\":20", "\"depthMm\":19.5"));
    workshop.blanks().addCaliperEntry(blank, turned, "turned");
    run(USUAL, 11_500);
    assertThat(together().runs()).hasSize(1);
    assertThat(together().modulusMPa().value()).isCloseTo(11_500, within(1.0));
  }

  @Test
  void theBowIsANewerCaliperEntryAndTheForecastWarnsOfIt() throws Exception {
    run(USUAL, 12_000);
    List<Double> turns = new ArrayList<>();
    List<Double> readings = new ArrayList<>();
    for (int degrees = 0; degrees < 360; degrees += 45) {
      turns.add((double) degrees);
      readings.add(3 + 1.2 * Math.cos(Math.toRadians(degrees - 90)));
    }
    double[] turned = turns.stream().mapToDouble(d -> d).toArray();
    double[] read = readings.stream().mapToDouble(d -> d).toArray();
    Order order = OrderReader.read(ORDER);
    ForecastShaft forecast = new ForecastShaft(SPECIES, Sureness.USUAL);
    assertThat(forecast.of(together(), laid(USUAL).before(), order).warnings())
        .noneMatch(w -> w instanceof BowWarning);
    Bow bow = new KeepBow(workshop).keep(laid(USUAL), turned, read);
    assertThat(bow.sizeMm()).isCloseTo(1.2, within(1e-9));
    assertThat(laid(USUAL).bowMm()).isCloseTo(1.2, within(1e-9));
    assertThat(workshop.blanks().caliperEntries(blank)).hasSize(2);
    assertThat(workshop.blanks().caliperNow(blank).why()).contains("bow 1.20 mm, belly at 90°");
    assertThat(forecast.of(together(), laid(USUAL).before(), order).warnings())
        .anyMatch(w -> w.inWords().contains("1.20 mm off straight"));
  }

  @Test
  void theGradeRestsOnAllRunsAsTheBenchForetellsAndWarnsOfTheBow() throws Exception {
    run(USUAL, 12_000);
    run(USUAL.turnedBy(60), 12_060);
    run(USUAL.turnedBy(120), 11_970);
    workshop
        .blanks()
        .addCaliperEntry(blank, laid(USUAL).before().withBow(1.5, 90), "rolled past the gauge");
    workshop.orders().enter(OrderReader.readDocument(ORDER));
    GradeBlank.Graded graded = new GradeBlank(workshop, SPECIES).grade("25-014", "R-1");
    double foretold =
        new ForecastShaft(SPECIES, Sureness.USUAL)
            .of(together(), laid(USUAL).before(), OrderReader.read(ORDER))
            .grade()
            .stiffnessNPerMm()
            .value();
    assertThat(graded.graded().grade().stiffnessNPerMm().value()).isCloseTo(foretold, within(1e-9));
    assertThat(graded.json()).contains("1.50 mm off straight");
  }

  @Test
  void turnsThatTellNoBowAreRefusedAndNothingIsKept() throws Exception {
    double[] turned = {0, 180, 0, 180};
    assertThrows(
        WorkshopException.class,
        () -> new KeepBow(workshop).keep(laid(USUAL), turned, new double[] {1, 2, 1, 2}));
    assertThat(workshop.blanks().caliperEntries(blank)).hasSize(1);
  }

  @Test
  void theWoodIsSaidAtTwelvePercentAndAtBothEndsOfTheYear() throws Exception {
    run(USUAL, 12_000);
    WoodInTheYear wood = WoodInTheYear.of(SPECIES, together().newest().shaft(), 12_000);
    assertThat(wood.modulusAt12MPa()).isLessThan(12_000);
    assertThat(wood.densityAt12KgM3()).isGreaterThan(wood.densityKgM3());
    assertThat(wood.year().dryWinterMPa()).isGreaterThan(wood.year().dampSummerMPa());
  }

  @Test
  void drawsAndBudgetAgreeOnAnOrdinaryRun() throws Exception {
    run(USUAL, 12_000);
    SecondOpinion opinion = SecondOpinion.of(together().newest());
    assertThat(opinion.draws().settled()).isTrue();
    assertThat(opinion.check().agrees()).isTrue();
  }
}
