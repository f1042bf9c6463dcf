package sagwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.SectionShape;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LineStatistics;
import sagwright.bench.LoadCalibration;
import sagwright.job.InventedBlanks.Spec;
import sagwright.sheet.CalibrationWriter;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.BlankState;
import sagwright.workshop.Grade;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.RunClosing;
import sagwright.workshop.RunJournal;
import sagwright.workshop.RunStart;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class GradeAgainTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final double ASK = InventedBlanks.finishedStiffnessNPerMm(12_000);

  @TempDir Path folder;
  private Workshop workshop;
  private ImportDocuments imports;

  @BeforeEach
  void open() throws Exception {
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.system(), "1.0"));
    imports = new ImportDocuments(workshop, SPECIES);
    bring(InventedBlanks.sheet(Spec.ash("25-001", 12_000)));
    bring(InventedBlanks.order("R-0001", ASK, 5));
    workshop.settings().set(Settings.INITIALS, "KM");
    new GradeBlank(workshop, SPECIES).grade("25-001", "R-0001");
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private void bring(String document) throws Exception {
    imports.bring(document, true);
  }

  private Blank blank() throws WorkshopException {
    return workshop.blanks().require("25-001");
  }

  private List<Grade> grades() throws WorkshopException {
    return workshop.grades().of(blank());
  }

  private GradeChange lastChange() throws WorkshopException {
    List<Grade> grades = grades();
    return BlankRecord.of(workshop, "25-001").changes().get(grades.get(grades.size() - 1).id());
  }

  private static double kept(Grade grade) {
    return JsonLine.parse(grade.answer()).number("stiffnessNPerMm");
  }

  @Test
  void aGradeIsKeptWithOrderForecastProgramAndInitials() throws Exception {
    Grade grade = grades().get(0);
    assertThat(grade.orderNumber()).isEqualTo("R-0001");
    assertThat(grade.program()).isEqualTo("1.0");
    assertThat(grade.initials()).isEqualTo("KM");
    assertThat(kept(grade)).isCloseTo(ASK, within(1e-6 * ASK));
    new GradeBlank(workshop, SPECIES).grade("25-001", "R-0001", "JB");
    assertThat(grades().get(1).initials()).isEqualTo("JB");
  }

  @Test
  void aSofterSecondRunGradesAgainAndSaysSo() throws Exception {
    bring(InventedBlanks.sheet(Spec.ash("25-001", 11_760)));
    assertThat(grades()).hasSize(2);
    assertThat(kept(grades().get(0))).isCloseTo(ASK, within(1e-6 * ASK));
    // the mean of two runs of one set-up, the taper being the same
    assertThat(kept(grades().get(1))).isCloseTo(0.99 * ASK, within(1e-3 * ASK));
    GradeChange change = lastChange();
    assertThat(change.because()).containsExactly("run 2 is 2.0 % softer");
    assertThat(change.isChance()).isLessThan(change.wasChance());
    assertThat(BlankRecord.of(workshop, "25-001").json())
        .contains("\"because\":[\"run 2 is 2.0 % softer\"]");
  }

  @Test
  void whereNothingComesOutOtherwiseNothingIsStored() throws Exception {
    assertThat(new GradeAgain(workshop, SPECIES).all()).isEmpty();
    bring(InventedBlanks.sheet(Spec.ash("25-002", 12_000)));
    assertThat(new GradeAgain(workshop, SPECIES).all()).isEmpty();
  }

  @Test
  void anOrderThatAsksOtherwiseGradesAgain() throws Exception {
    bring(InventedBlanks.order("R-0001", 1.04 * ASK, 4));
    assertThat(grades()).hasSize(2);
    assertThat(lastChange().because().get(0)).startsWith("the order asks ").contains("N/mm, not ");
    assertThat(lastChange().because()).contains("it asks ± 4 %, not ± 5 %");
    assertThat(lastChange().isChance()).isLessThan(0.6);
  }

  @Test
  void correctedCalipersGradeAgain() throws Exception {
    new KeepBlank(workshop, SPECIES)
        .measure(
            new KeepBlank.Measured(
                "25-001",
                "European ash",
                "near size",
                SectionShape.ELLIPSE,
                1490.0,
                401.0,
                null,
                List.of(
                    new KeepBlank.Calipers(0, 12.4, null),
                    new KeepBlank.Calipers(700, 21.9, null),
                    new KeepBlank.Calipers(1490, 30.9, null)),
                Grain.UNSEEN),
            "the calipers had a burr");
    assertThat(lastChange().because())
        .contains("the calipers say 0.10 mm thinner in the mean", "it weighs 401.0 g, not 405.0");
    assertThat(JsonLine.parse(grades().get(1).answer()).number("massG"))
        .isNotEqualTo(JsonLine.parse(grades().get(0).answer()).number("massG"));
  }

  @Test
  void aSurerShopGradesAgain() throws Exception {
    workshop.settings().set(Settings.SURENESS, "0.9999");
    assertThat(new GradeAgain(workshop, SPECIES).all()).hasSize(1);
    assertThat(lastChange().because().get(0)).isEqualTo("sure from 99.99 in 100, not from 95");
  }

  @Test
  void takingTheChangeBackGradesOnceMoreAndTakingAGradeBackDoesNot() throws Exception {
    bring(InventedBlanks.order("R-0001", 1.04 * ASK, 4));
    assertThat(new TakeBack(workshop, SPECIES).last()).isEqualTo("changed order R-0001");
    assertThat(grades()).hasSize(3);
    assertThat(grades().get(2).answer()).isEqualTo(grades().get(0).answer());
    assertThat(new TakeBack(workshop, SPECIES).last()).isEqualTo("graded 25-001");
    assertThat(grades()).hasSize(2);
  }

  @Test
  void aRunThatIsSetAsideNoLongerStandsBehindTheGrade() throws Exception {
    bring(InventedBlanks.sheet(Spec.ash("25-001", 11_760)));
    Run second = workshop.runs().of(blank()).get(1);
    workshop.runs().setAside(second, "a support had slipped");
    new GradeAgain(workshop, SPECIES).of(blank());
    assertThat(lastChange().because()).containsExactly("run 2 is set aside: a support had slipped");
    assertThat(grades().get(2).answer()).isEqualTo(grades().get(0).answer());
    workshop.runs().setAside(workshop.runs().of(blank()).get(0), "that one too");
    assertThat(new GradeAgain(workshop, SPECIES).of(blank())).isEmpty(); // nothing to grade by
  }

  @Test
  void runsOnTheShaftAsItWasBeforeTurningNoLongerCount() throws Exception {
    bring(InventedBlanks.sheet(Spec.ash("25-001", 12_000)));
    bring(InventedBlanks.sheet(Spec.ash("25-001", 12_000).withButt(30.5)));
    assertThat(lastChange().because())
        .containsExactly(
            "run 3 agrees",
            "runs 1, 2 no longer count",
            "the calipers say 0.17 mm thinner in the mean");
  }

  @Test
  void aFinishedCueKeepsTheGradeOfItsBlank() throws Exception {
    bring(InventedBlanks.sheet(Spec.ash("25-001", 11_760).at(BlankState.FINISHED_CUE)));
    assertThat(grades()).hasSize(1);
  }

  @Test
  void endedOrdersAreLeftAlone() throws Exception {
    workshop.orders().end(workshop.orders().require("R-0001"), "delivered");
    bring(InventedBlanks.sheet(Spec.ash("25-001", 11_760)));
    assertThat(grades()).hasSize(1);
  }

  @Test
  void aCalibrationThatReadsOtherwiseIsSaidOfTheRunsBeforeIt() {
    Calibration then = calibration(2.5e-5, 1e-3);
    Calibration now = calibration(2.5e-5 * 1.02, 1e-3 / 1.01);
    CalibrationChanged changed = CalibrationChanged.of(3, then, now).orElseThrow();
    assertThat(changed.percent()).isCloseTo(100 * (1.02 * 1.01 - 1), within(1e-9));
    assertThat(changed.inWords())
        .isEqualTo(
            "by the calibration of 2 Mar 2026 run 3 would be 3.0 % stiffer than it was recorded");
    // both scales known to 0.1 and 0.05 %: 0.3 % is no change, 0.4 % is one
    assertThat(CalibrationChanged.of(3, then, calibration(2.5e-5 * 1.003, 1e-3))).isEmpty();
    assertThat(CalibrationChanged.of(3, then, calibration(2.5e-5 * 1.004, 1e-3))).isPresent();
  }

  @Test
  void aCalibrationThatReadsOtherwiseGradesAgain() throws Exception {
    Sheet sheet = new SheetReader(SPECIES).read(InventedBlanks.sheet(Spec.ash("25-001", 12_000)));
    RunJournal journal =
        workshop
            .runs()
            .start(
                new RunStart(
                    blank(),
                    Instant.parse("2026-03-03T09:00:00Z"),
                    sheet.documentWithoutReadings(),
                    CalibrationWriter.write(calibration(2.5e-5, 1e-3)),
                    null,
                    null));
    workshop
        .runs()
        .close(
            journal,
            new RunClosing(
                "the load is back off",
                sheet.json(),
                new LineStatistics(300, 0, 0, 0),
                new EvaluateRun(SPECIES).of(sheet, List.of()),
                null));
    new GradeAgain(workshop, SPECIES).of(blank());
    workshop.calibrations().add(CalibrationWriter.write(calibration(2.5e-5 * 1.012, 1e-3)));
    assertThat(new GradeAgain(workshop, SPECIES).all()).hasSize(1);
    assertThat(lastChange().because())
        .containsExactly(
            "by the calibration of 2 Mar 2026 run 2 would be 1.2 % stiffer than it was recorded");
    assertThat(lastChange().isChance()).isEqualTo(lastChange().wasChance());
  }

  private static Calibration calibration(double newtonPerCount, double mmPerStep) {
    return new Calibration(
        Instant.parse("2026-03-02T09:00:00Z"),
        365,
        "T",
        new LoadCalibration(newtonPerCount, 0.1, 0.02, 50),
        new GaugeCalibration(mmPerStep, 0.05, 0.005, 25, 0),
        0.002,
        0);
  }
}
