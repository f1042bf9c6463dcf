package sagwright.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.check.ControlLimits;
import sagwright.job.AllocateOrders;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRodState;
import sagwright.job.RodReading;
import sagwright.job.RodStanding;
import sagwright.sheet.JsonLine;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Guess;
import sagwright.workshop.Keeper;
import sagwright.workshop.RackRow;
import sagwright.workshop.Run;
import sagwright.workshop.RunOrigin;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** The example workshop as it is on its first day: the program must find what its wood truly is. */
class ExampleWorkshopTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final LocalDate TODAY = LocalDate.parse("2026-11-28");
  private static final InstantSource NOW =
      InstantSource.fixed(TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC));
  private static final ExampleRack TRUTH = new ExampleRack(SPECIES);

  @TempDir private static Path folder;
  private static Workshop workshop;

  @BeforeAll
  static void make() throws WorkshopException {
    Path file = folder.resolve("example.db");
    new ExampleWorkshop(SPECIES, "test").make(file, TODAY, (done, of) -> {});
    workshop = Workshop.open(file, new Keeper(NOW, "test"));
  }

  @AfterAll
  static void close() throws WorkshopException {
    workshop.close();
  }

  /** What a run has found, and the truth of the blank that it lies under. */
  private record Found(String tag, ExampleWood wood, JsonLine answer, JsonLine sheet) {
    /** How far the modulus lies from the truth, in its own standard uncertainties. */
    double missInU() {
      double at12 = answer.number("modulusAt12PercentMPa");
      double u = answer.number("modulusStdUncertaintyMPa") * at12 / answer.number("modulusMPa");
      return (at12 - wood.modulus12MPa()) / u;
    }
  }

  private static List<Found> found() throws WorkshopException {
    List<Found> found = new ArrayList<>();
    for (String tag : TRUTH.tags()) {
      Blank blank = workshop.blanks().require(tag);
      for (Run run : workshop.runs().counting(blank)) {
        found.add(
            new Found(
                tag,
                TRUTH.wood(tag).orElseThrow(),
                JsonLine.parse(run.outcome().answer()),
                JsonLine.parse(workshop.runs().sheet(run))));
      }
    }
    return found;
  }

  @Test
  void modulusFoundCoversTheTruth() throws WorkshopException {
    List<Found> found = found();
    assertTrue(found.size() > 250, "runs: " + found.size());
    for (Found each : found) {
      assertTrue(Math.abs(each.missInU()) < 4.2, each.tag() + " misses by " + each.missInU());
    }
    double within95 =
        found.stream().filter(f -> Math.abs(f.missInU()) < 1.96).count() / (double) found.size();
    assertTrue(within95 > 0.90 && within95 < 0.985, "within 95 %: " + within95);
    double squares = found.stream().mapToDouble(f -> f.missInU() * f.missInU()).average().orElse(0);
    assertTrue(squares > 0.75 && squares < 1.35, "mean square of the misses: " + squares);
  }

  /**
   * Calipers within 0.02 mm on some 20 mm leave the volume within 0.2 %, four times that is far.
   */
  @Test
  void densityFoundIsNearTheTruth() throws WorkshopException {
    for (Found each : found()) {
      JsonLine shaft = each.sheet().object("shaft");
      if (shaft.objectOrNull("splice") == null) {
        double truth = each.wood().densityKgM3(shaft.number("moisturePercent"));
        assertEquals(truth, each.answer().number("densityKgM3"), 0.008 * truth, each.tag());
      }
    }
  }

  @Test
  void blanksStandAtAllStages() throws WorkshopException {
    List<RackRow> rows = workshop.rack().rows();
    Set<String> stages =
        rows.stream().map(r -> r.state().stage()).collect(Collectors.toCollection(TreeSet::new));
    assertTrue(
        stages.containsAll(
            Set.of(
                "square",
                "roughed",
                "second turning",
                "near size",
                "planed",
                "finished cue",
                "check rod")),
        stages.toString());
    assertTrue(rows.size() > 140 && rows.size() < 175, "blanks: " + rows.size());
    assertTrue(rows.stream().filter(r -> r.state().promisedTo() != null).count() >= 8);
    assertEquals(12, workshop.orders().open().size());
    assertTrue(workshop.orders().all().size() >= 30);
  }

  @Test
  void thingsGoWrongAndAreWrittenDown() throws WorkshopException {
    List<Run> runs = new ArrayList<>();
    int notes = 0;
    int ended = 0;
    for (RackRow row : workshop.rack().rows()) {
      runs.addAll(workshop.runs().of(row.blank()));
      notes += workshop.notes().of(row.blank()).size();
      ended += row.state().endedWhy() == null ? 0 : 1;
    }
    assertTrue(notes > 30, "notes: " + notes);
    assertEquals(6, ended);
    assertEquals(1, runs.stream().filter(r -> r.outcome().answer() == null).count());
    assertEquals(2, runs.stream().filter(Run::isSetAside).count());
    assertEquals(1, runs.stream().filter(r -> r.moved() != null).count());
    assertEquals(3, runs.stream().filter(r -> r.origin() == RunOrigin.TYPED).count());
    assertTrue(workshop.grains().allNow().size() > 100);
  }

  @Test
  void servingWhoComesFirstWouldCostALaterOrder() throws WorkshopException {
    AllocateOrders.Answer answer = new AllocateOrders(workshop, SPECIES).all();
    double atOnce = answer.greatest().sumOfChances();
    double firstCome = answer.firstCome().sumOfChances();
    assertTrue(atOnce > firstCome + 0.5, atOnce + " over " + firstCome);
  }

  @Test
  void everyRunKeepsItsLines() throws WorkshopException {
    for (RackRow row : workshop.rack().rows()) {
      for (Run run : workshop.runs().of(row.blank())) {
        boolean fromBench = run.origin() == RunOrigin.BENCH;
        assertEquals(fromBench, workshop.runs().wire(run).length > 1000, "run " + run.id());
      }
    }
    assertEquals(0, workshop.cutOffRuns().count());
  }

  @Test
  void oneCalibrationIsInForceAndOthersHaveRunOut() throws WorkshopException {
    CalibrationInForce inForce = new CalibrationInForce(workshop, NOW);
    assertTrue(inForce.complete().isValidAt(NOW.instant()));
    assertTrue(workshop.calibrations().all().size() > 3);
    double truly = ExampleWorkshop.TRUE_INSTRUMENTS.load().newtonPerCount();
    double found = inForce.complete().load().newtonPerCount();
    assertEquals(truly, found, 1e-3 * truly);
  }

  @Test
  void theRodWasOutOnOneDayAndIsInNow() throws WorkshopException {
    RodStanding standing =
        new CheckRodState(workshop, SPECIES, new CalibrationInForce(workshop, NOW), NOW).standing();
    assertFalse(standing.isOut(), standing.inWords());
    ControlLimits limits = standing.chart().individualLimits();
    List<RodReading> out =
        standing.readings().stream()
            .filter(
                r ->
                    r.differencePercent() < limits.lower()
                        || r.differencePercent() > limits.upper())
            .toList();
    assertEquals(1, out.size(), out.toString());
    assertEquals(
        TODAY.minusDays(ExampleChecks.LOOSE_DAYS_AGO),
        LocalDate.ofInstant(out.get(0).at(), ZoneOffset.UTC));
  }

  @Test
  void twoHandsGuessed() throws WorkshopException {
    List<Guess> guesses = workshop.guesses().all();
    for (String hand : List.of(ExampleWorkshop.MAKER, ExampleWorkshop.APPRENTICE)) {
      assertTrue(guesses.stream().filter(g -> hand.equals(g.initials())).count() >= 15, hand);
    }
  }

  @Test
  void nothingLiesInTheFuture() throws WorkshopException {
    Instant newest = workshop.actions().newest(1).get(0).at();
    assertTrue(newest.isBefore(NOW.instant()), newest.toString());
  }

  @Test
  void itIsToldFromARealWorkshop(@TempDir Path own) throws WorkshopException {
    assertTrue(workshop.isExample());
    assertThrows(WorkshopException.class, workshop::requireReal);
    try (Workshop real = Workshop.openOrCreate(own.resolve("workshop.db"), new Keeper(NOW, "t"))) {
      assertFalse(real.isExample());
      real.requireReal();
    }
  }

  @Test
  void whatIsBrokenOffLeavesNothingNorWhatAPowerCutLeft(@TempDir Path own) throws IOException {
    Path file = own.resolve("example.db");
    Path cutOff = Files.createDirectory(own.resolve("example-being-made-1"));
    Files.writeString(cutOff.resolve("example.db"), "half of it");
    Files.setLastModifiedTime(cutOff, FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
    assertThrows(
        IllegalStateException.class,
        () ->
            new ExampleWorkshop(SPECIES, "test")
                .make(
                    file,
                    TODAY,
                    (done, of) -> {
                      if (done == 40) {
                        throw new IllegalStateException("the window was closed");
                      }
                    }));
    try (Stream<Path> left = Files.list(own)) {
      assertEquals(List.of(), left.toList());
    }
  }

  @Test
  void anExampleThatIsThereIsNotWrittenOver() {
    Path file = folder.resolve("example.db");
    WorkshopException refused =
        assertThrows(
            WorkshopException.class,
            () -> new ExampleWorkshop(SPECIES, "test").make(file, TODAY, (done, of) -> {}));
    assertTrue(refused.getMessage().endsWith("is there already"), refused.getMessage());
  }
}
