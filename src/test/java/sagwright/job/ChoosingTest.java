package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SetUp;
import sagwright.choose.Allocation.Pair;
import sagwright.choose.RankingWeights;
import sagwright.grade.Sureness;
import sagwright.job.InventedBlanks.Spec;
import sagwright.job.RankBlanks.Ranked;
import sagwright.sheet.AnswerLines;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.JsonLine;
import sagwright.sheet.OrderReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.ShortRecord;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Rank, promise and allocate on a workshop: docs/contract.md, section 7. */
class ChoosingTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final SheetReader READER = new SheetReader(SPECIES);

  private static final double ASK = InventedBlanks.finishedStiffnessNPerMm(12000);

  @TempDir Path folder;
  private Workshop workshop;

  @BeforeEach
  void open() throws WorkshopException {
    workshop = another();
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private Workshop another() throws WorkshopException {
    return Workshop.openOrCreate(
        folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "test"));
  }

  private void bring(String... documents) throws Exception {
    ImportDocuments imports = new ImportDocuments(workshop, SPECIES);
    for (String document : documents) {
      imports.bring(document, true);
    }
  }

  private RankBlanks.Answer rank(String order) throws WorkshopException {
    return new RankBlanks(workshop, SPECIES).of(workshop.orders().require(order));
  }

  private static List<String> tags(List<Ranked> ranked) {
    return ranked.stream().map(r -> r.standing().tag()).toList();
  }

  private Blank blank(String tag) throws WorkshopException {
    return workshop.blanks().require(tag);
  }

  private void promise(String tag, String order) throws WorkshopException {
    workshop.promises().make(blank(tag), workshop.orders().require(order));
  }

  @Test
  void eachLineIsTheForecastOfTheBlanksSheetButForTheFrequency() throws Exception {
    String order = InventedBlanks.order("R-0007", ASK, 5);
    bring(order);
    List<Spec> specs =
        List.of(
            Spec.ash("25-001", 12000),
            Spec.ash("25-002", 11500),
            Spec.ash("25-003", 12600).withButt(30.2));
    for (Spec spec : specs) {
      bring(InventedBlanks.sheet(spec));
    }
    for (Ranked ranked : rank("R-0007").blanks()) {
      Spec spec =
          specs.stream()
              .filter(s -> s.tag().equals(ranked.standing().tag()))
              .findFirst()
              .orElseThrow();
      Sheet sheet = READER.read(InventedBlanks.sheet(spec));
      ForecastShaft.Answer answer =
          new ForecastShaft(SPECIES, Sureness.USUAL).of(sheet, OrderReader.read(order));
      String forecast =
          AnswerWriter.forecast(
              spec.tag(), answer.graded(), sheet.assumed(), answer.evaluation().warnings());
      double hz = JsonLine.parse(forecast).number("firstBendingHz");
      assertEquals(forecast.replace("\"firstBendingHz\":" + hz + ",", ""), line(ranked));
    }
  }

  @Test
  void freeBlanksOfTheOrdersSpeciesStandBestFirstAndThoseThatCannotServeLast() throws Exception {
    bring(
        InventedBlanks.order("R-0007", ASK, 5),
        InventedBlanks.sheet(Spec.ash("25-001", 14000)),
        InventedBlanks.sheet(Spec.ash("25-002", 12000)),
        InventedBlanks.sheet(Spec.ash("25-003", 12000).of("Sugar maple")),
        InventedBlanks.sheet(Spec.ash("25-004", 12000).withButt(27)),
        InventedBlanks.untested(Spec.ash("25-005", 12000)),
        InventedBlanks.poor(Spec.ash("25-006", 12000)),
        InventedBlanks.sheet(Spec.ash("25-007", 12000).at("finished cue")),
        InventedBlanks.sheet(Spec.ash("25-008", 12000)),
        InventedBlanks.sheet(Spec.ash("25-009", 12000).of("European Ash")));
    workshop.blanks().end(blank("25-008"), "broke in the lathe");
    RankBlanks.Answer answer = rank("r-0007");
    assertEquals(
        List.of("25-002", "25-009", "25-001", "25-004", "25-005", "25-006"), tags(answer.blanks()));
    assertEquals(
        "{\"tag\":\"25-005\",\"cannot\":\"no run that gave an answer\"}",
        line(answer.blanks().get(4)));
    assertEquals(
        "{\"tag\":\"25-004\",\"cannot\":\"does not fit: 2.00 mm short of the finished round at 1473"
            + " mm\"}",
        line(answer.blanks().get(3)));
    assertEquals(List.of(), answer.promisedElsewhere());
  }

  @Test
  void aPromisedBlankStaysInItsOwnOrdersRankAloneUntilThePromiseIsTakenBack() throws Exception {
    bring(
        InventedBlanks.order("R-0007", ASK, 5),
        InventedBlanks.order("R-0008", ASK, 5),
        InventedBlanks.sheet(Spec.ash("25-001", 12000)),
        InventedBlanks.sheet(Spec.ash("25-002", 12400)));
    promise("25-001", "R-0007");
    assertEquals(List.of("25-001", "25-002"), tags(rank("R-0007").blanks()));
    assertEquals(List.of("25-002"), tags(rank("R-0008").blanks()));
    assertEquals(List.of("25-001"), tags(rank("R-0008").promisedElsewhere()));
    assertEquals("R-0007", rank("R-0008").promisedElsewhere().get(0).state().promisedTo());
    workshop.promises().release(blank("25-001"), workshop.orders().require("R-0007"));
    assertEquals(List.of("25-001", "25-002"), tags(rank("R-0008").blanks()));
    promise("25-001", "R-0008");
    workshop.actions().undoLast();
    assertEquals(List.of("25-001", "25-002"), tags(rank("R-0007").blanks()));
  }

  @Test
  void aRunThatWasSetAsideIsNoRun() throws Exception {
    bring(InventedBlanks.order("R-0007", ASK, 5), InventedBlanks.sheet(Spec.ash("25-001", 12000)));
    workshop.runs().setAside(workshop.runs().of(blank("25-001")).get(0), "the shaft slipped");
    assertFalse(rank("R-0007").blanks().get(0).standing().canServe());
    workshop.actions().undoLast();
    assertTrue(rank("R-0007").blanks().get(0).standing().canServe());
  }

  @Test
  void theShapeIsWhatTheCalipersSaidLast() throws Exception {
    bring(InventedBlanks.order("R-0007", ASK, 5), InventedBlanks.sheet(Spec.ash("25-001", 12000)));
    double before = spare(rank("R-0007"));
    bring(InventedBlanks.untested(Spec.ash("25-001", 0).withButt(30)));
    assertEquals(before - 1, spare(rank("R-0007")), 0.05);
  }

  private static double spare(RankBlanks.Answer answer) {
    return answer.blanks().get(0).standing().graded().forecast().cut().leastSpareMm();
  }

  @Test
  void severalRunsCountTogetherAsASurveyHasThem() throws Exception {
    Spec spec = Spec.ash("25-001", 12000);
    String first = InventedBlanks.sheet(spec);
    String second =
        InventedBlanks.sheet(Spec.ash("25-001", 12100), new SetUp(300, 1300, 800, 800, 0));
    String order = InventedBlanks.order("R-0007", ASK, 5);
    bring(order, first, second);
    SurveyShaft survey = new SurveyShaft(SPECIES);
    SurveyShaft.Answer together =
        survey.of(
            List.of(survey.evaluate(READER.read(first)), survey.evaluate(READER.read(second))));
    var forecast = new ForecastShaft(SPECIES, Sureness.USUAL).of(together, OrderReader.read(order));
    Ranked ranked = rank("R-0007").blanks().get(0);
    assertEquals(forecast.grade(), ranked.standing().graded().grade());
    assertEquals(2, ranked.wood().runIds().size());
    ShortRecord kept = workshop.shortRecords(READER).of(blank("25-001"));
    assertTrue(kept.surveyedWood().isPresent(), "kept for next time");
    assertEquals(line(ranked), line(rank("R-0007").blanks().get(0)), "the same from what was kept");
    GradeBlank.Graded graded = new GradeBlank(workshop, SPECIES).grade("25-001", "R-0007");
    assertEquals(forecast.grade(), graded.graded().grade());
    assertEquals(
        ranked.wood().runIds(), workshop.grades().of(blank("25-001")).get(0).basis().runIds());

    workshop.runs().setAside(workshop.runs().of(blank("25-001")).get(1), "the gauge stuck");
    Ranked alone = rank("R-0007").blanks().get(0);
    assertEquals(1, alone.wood().runIds().size());
    assertNotEquals(
        ranked.standing().graded().grade().stiffnessNPerMm(),
        alone.standing().graded().grade().stiffnessNPerMm());
  }

  @Test
  void aModulusThatVariesComesBackFromTheRecordAsItWas() throws Exception {
    bring(InventedBlanks.order("R-0007", ASK, 5));
    int i = 0;
    for (double from : new double[] {50, 250, 450, 650}) {
      SetUp setUp = new SetUp(from, from + 700, from + 350, from + 350, 0);
      bring(InventedBlanks.sheet(Spec.ash("25-001", 11000 + 700 * i++), setUp));
    }
    Ranked fresh = rank("R-0007").blanks().get(0);
    assertTrue(fresh.wood().modulusMPa().variesAlong(), "the runs say so plainly");
    Ranked kept = rank("R-0007").blanks().get(0);
    assertEquals(line(fresh), line(kept));
  }

  @Test
  void runsOnTheShaftAsItWasBeforeTheNewestRunCountNoMore() throws Exception {
    bring(
        InventedBlanks.order("R-0007", ASK, 5),
        InventedBlanks.sheet(Spec.ash("25-001", 13000)),
        InventedBlanks.sheet(Spec.ash("25-001", 12000).withButt(30.5)));
    Ranked ranked = rank("R-0007").blanks().get(0);
    assertEquals(12000, ranked.wood().modulusMPa().at(0), 0.01);
    assertEquals(1, ranked.wood().runIds().size());
  }

  @Test
  void whatTheShopWeighsRanks() throws Exception {
    bring(
        InventedBlanks.order("R-0007", ASK, 5),
        InventedBlanks.sheet(Spec.ash("25-001", 12000)),
        InventedBlanks.sheet(Spec.ash("25-002", 14000).withButt(33)));
    assertEquals(List.of("25-001", "25-002"), tags(rank("R-0007").blanks()));
    new ShopSettings(workshop).setRankingWeights(new RankingWeights(0, 0, 0, 1));
    assertEquals(List.of("25-002", "25-001"), tags(rank("R-0007").blanks()));
    assertEquals("spare 100 %", rank("R-0007").weights().inWords());
  }

  @Test
  void allOpenOrdersArePairedAtOnceSoThatTheBestIsNotSpent() throws Exception {
    bring(
        InventedBlanks.order("R-0001", ASK, 6),
        InventedBlanks.order("R-0002", ASK * 12100 / 12000, 1),
        InventedBlanks.order("R-0003", ASK, 6),
        InventedBlanks.order("R-0004", ASK, 6),
        InventedBlanks.sheet(Spec.ash("25-001", 12050)),
        InventedBlanks.sheet(Spec.ash("25-002", 12400)),
        InventedBlanks.sheet(Spec.ash("25-003", 12000)),
        InventedBlanks.sheet(Spec.ash("25-004", 12000).withButt(27)));
    promise("25-003", "R-0003");
    workshop.orders().end(workshop.orders().require("R-0004"), "called off");
    AllocateOrders.Answer answer = new AllocateOrders(workshop, SPECIES).all();
    assertEquals(List.of("R-0001", "R-0002"), answer.chances().orders());
    assertEquals(
        List.of("25-002", "25-001"), answer.greatest().pairs().stream().map(Pair::tag).toList());
    assertEquals(
        List.of("25-001", "25-002"), answer.firstCome().pairs().stream().map(Pair::tag).toList());
    for (Pair pair : answer.greatest().pairs()) {
      Ranked ranked =
          rank(pair.order()).blanks().stream()
              .filter(r -> r.standing().tag().equals(pair.tag()))
              .findFirst()
              .orElseThrow();
      assertEquals(ranked.standing().chance(), pair.chance());
    }
    Pair rash = answer.firstCome().pairs().get(0);
    assertTrue(answer.costOf(rash).toOthers() > 0.1, answer.costOf(rash).toString());
  }

  @Test
  void oneBlankIsPromisedOnceHoweverManyAskAtOnce() throws Exception {
    int orders = 8;
    bring(InventedBlanks.sheet(Spec.ash("25-001", 12000)));
    for (int i = 0; i < orders; i++) {
      bring(InventedBlanks.order("R-" + i, ASK, 5));
    }
    ExecutorService makers = Executors.newFixedThreadPool(orders);
    try (Workshop other = another()) {
      List<Callable<String>> promises = new ArrayList<>();
      for (int i = 0; i < orders; i++) {
        Workshop here = i % 2 == 0 ? workshop : other;
        String number = "R-" + i;
        promises.add(
            () -> {
              WorkshopOrder order = here.orders().require(number);
              here.promises().make(here.blanks().require("25-001"), order);
              return number;
            });
      }
      List<String> made = new ArrayList<>();
      for (Future<String> promise : makers.invokeAll(promises)) {
        try {
          made.add(promise.get());
        } catch (ExecutionException e) {
          assertTrue(e.getCause().getMessage().contains("promised to"), e.getCause().getMessage());
        }
      }
      assertEquals(1, made.size(), made.toString());
      assertEquals(List.of("25-001"), tags(rank(made.get(0)).blanks()));
      String another = made.get(0).equals("R-0") ? "R-1" : "R-0";
      assertEquals(List.of(), rank(another).blanks());
    } finally {
      makers.shutdownNow();
    }
  }

  @Test
  void rankingGoesOnWhileOthersWrite() throws Exception {
    bring(InventedBlanks.order("R-0007", ASK, 5));
    for (int i = 0; i < 20; i++) {
      bring(InventedBlanks.sheet(Spec.ash("24-" + i, 11500 + 50 * i)));
    }
    ExecutorService reader = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> ranks =
          reader.submit(
              () -> {
                int sizes = 0;
                for (int i = 0; i < 20; i++) {
                  sizes += rank("R-0007").blanks().size();
                }
                return sizes;
              });
      for (int i = 0; i < 20; i++) {
        bring(InventedBlanks.sheet(Spec.ash("25-" + i, 12000)));
      }
      int seen = ranks.get();
      assertTrue(seen >= 20 * 20 && seen <= 20 * 40, "each rank saw a whole rack: " + seen);
      assertEquals(40, rank("R-0007").blanks().size());
    } finally {
      reader.shutdownNow();
    }
  }

  private static String line(Ranked ranked) {
    AnswerLines lines = new AnswerLines(1);
    ranked.addTo(lines);
    return lines.toString();
  }
}
