package sagwright.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.Calibration;
import sagwright.bench.Ending;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;
import sagwright.bench.LoadLimits;
import sagwright.bench.Reading;
import sagwright.bench.TestPlan;
import sagwright.bench.TestReplay;
import sagwright.bench.WireFormat;
import sagwright.run.Samples;
import sagwright.sheet.CalibrationWriter;
import sagwright.sheet.JsonLine;
import sagwright.sheet.SetUpReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.sheet.TestSheet;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.RunJournal;
import sagwright.workshop.RunStart;
import sagwright.workshop.Workshop;

/** Recorded runs that end well, and runs that are cut off and closed later. */
class SalvageRunsTest {
  private static final Instant START = Instant.parse("2026-03-02T09:00:00Z");
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final Calibration CALIBRATION =
      new Calibration(
          START,
          365,
          "KM",
          new LoadCalibration(2.5e-5, 0.1, 0.02, 50),
          new GaugeCalibration(0.001, 0.05, 0.005, 25, 0),
          0.002,
          0);
  private static final LoadLimits LIMITS = new LoadLimits(18, 40);

  @TempDir Path folder;
  private Workshop workshop;
  private RunStart start;
  private RunJournal journal;
  private byte[] wire;

  @BeforeEach
  void startARun() throws Exception {
    SheetReader reader = new SheetReader(SPECIES);
    Sheet example = reader.readFile(Path.of("docs/examples/25-014.json"));
    workshop =
        Workshop.openOrCreate(
            folder.resolve("workshop.db"), new Keeper(InstantSource.fixed(START), "test"));
    Blank blank = workshop.blanks().enter(example);
    String document =
        TestSheet.before(
            workshop.blanks().caliperNow(blank).document(),
            SetUpReader.read(
                "{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600}", 1490),
            CALIBRATION);
    start =
        new RunStart(blank, START, document, CalibrationWriter.write(CALIBRATION), LIMITS, null);
    journal = workshop.runs().start(start);
    wire = wireOf((Samples) example.readings());
  }

  @AfterEach
  void close() throws Exception {
    journal.close();
    workshop.close();
  }

  @Test
  void aRecordedRunIsStoredWithItsAnswerAndItsLine() throws Exception {
    journal.append(wire);
    Run run =
        new CloseRun(workshop, SPECIES)
            .close(
                start,
                journal,
                TestReplay.of(wire, new TestPlan(CALIBRATION, LIMITS), Ending.LOAD_OFF));
    JsonLine answer = RunAnswer.of(run);
    assertEquals(12340, answer.number("modulusMPa"), 0.005 * 12340);
    assertEquals(run.id(), answer.number("run").longValue());
    assertEquals(List.of(run), workshop.runs().counting(start.blank()));
    assertTrue(run.line().readings() > 100);
    assertEquals(List.of(), new SalvageRuns(workshop, SPECIES).all());
    // the sheet elsewhere gives the same answer to the last digit
    Sheet exported =
        new SheetReader(SPECIES)
            .read(new ExportBlank(workshop, SPECIES).sheets("25-014", false).get(0));
    assertEquals(
        answer.number("modulusMPa"),
        JsonLine.parse(new EvaluateRun(SPECIES).of(exported, List.of()).answer())
            .number("modulusMPa"));
    assertEquals(
        List.of("positionUncertaintyMm"),
        exported.assumed().stream().filter(a -> a.startsWith("position")).toList());
  }

  @Test
  void aRunCutOffBehindItsLoadingIsSalvagedWithAnAnswer() throws Exception {
    journal.append(Arrays.copyOf(wire, wire.length * 3 / 4 + 5)); // in the middle of a line
    journal.close();
    SalvageRuns.Salvaged salvaged = new SalvageRuns(workshop, SPECIES).all().get(0);
    assertEquals("25-014", salvaged.tag());
    assertTrue(salvaged.samples() > 100, "samples: " + salvaged.samples());
    assertNotNull(salvaged.run().outcome().answer());
    assertTrue(salvaged.run().outcome().answer().contains("the run was cut off"));
    assertEquals(
        12340,
        JsonLine.parse(salvaged.run().outcome().answer()).number("modulusMPa"),
        0.01 * 12340);
    assertEquals(List.of(), new SalvageRuns(workshop, SPECIES).all());
  }

  @Test
  void aRunCutOffBeforeItsLoadingIsKeptWithoutAnAnswer() throws Exception {
    journal.append(Arrays.copyOf(wire, 400));
    journal.close();
    SalvageRuns.Salvaged salvaged = new SalvageRuns(workshop, SPECIES).all().get(0);
    assertNull(salvaged.run().outcome().answer());
    assertEquals(List.of(salvaged.run()), workshop.runs().of(start.blank()));
    assertEquals(400, workshop.runs().wire(salvaged.run()).length);
  }

  @Test
  void aRunThatGoesOnIsNotSalvaged() throws Exception {
    journal.append(wire);
    assertEquals(List.of(), new SalvageRuns(workshop, SPECIES).all());
  }

  private static byte[] wireOf(Samples samples) {
    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    for (int i = 0; i < samples.size(); i++) {
      bytes.writeBytes(
          WireFormat.bytes(
              new Reading(
                  i,
                  Math.round(samples.timeS()[i] * 1e6),
                  (int) CALIBRATION.load().counts(samples.loadN()[i]),
                  CALIBRATION.gauge().steps(samples.deflectionMm()[i]),
                  0)));
    }
    return bytes.toByteArray();
  }
}
