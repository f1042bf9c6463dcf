package sagwright.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.Ending;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.InventedBench;
import sagwright.bench.LoadCalibration;
import sagwright.bench.LoadLimits;
import sagwright.bench.RecordedRun;
import sagwright.bench.TestPlan;
import sagwright.bench.TestReplay;
import sagwright.run.ReadingUncertainty;
import sagwright.run.Samples;
import sagwright.run.StiffnessFinder;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

/**
 * Strangers' measured records (reference/data/measured/README.md), played as a head and read as a
 * run: the stiffness is the sheet's own.
 */
@Timeout(120)
class PlayedSheetsTest {
  private static final Path SHEETS = Path.of("src/test/resources/reference/data/measured/sheets");

  /**
   * Those that hold a run sample by sample; the others are read by hand, and no head plays them.
   */
  static List<Path> sheets() throws IOException, BadDocumentException {
    List<Path> sampled = new ArrayList<>();
    try (Stream<Path> files = Files.list(SHEETS)) {
      for (Path file : files.sorted().toList()) {
        if (read(file).readings() instanceof Samples) {
          sampled.add(file);
        }
      }
    }
    return sampled;
  }

  private static Sheet read(Path file) throws BadDocumentException {
    return new SheetReader(SpeciesTable.published()).readFile(file);
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void aPlayedSheetGivesTheSheetsOwnStiffness(Path file) throws Exception {
    Sheet sheet = read(file);
    Samples samples = (Samples) sheet.readings();
    double greatestN = Arrays.stream(samples.loadN()).max().orElseThrow();
    Calibration calibration =
        new Calibration(
            InventedBench.CALIBRATION.made(),
            365,
            null,
            new LoadCalibration(greatestN / 1e6, 0.1, 0.02, 2 * greatestN),
            new GaugeCalibration(0.0001, 0.05, 0.005, 1000, 0),
            0,
            0);
    TestPlan plan = new TestPlan(calibration, new LoadLimits(3 * greatestN, 4 * greatestN));
    Recorder line = new Recorder();
    assertTrue(
        new SheetPlayer(samples, calibration, PlayerFaults.NONE, new JumpingClock()).play(line));
    RecordedRun run = TestReplay.of(line.written.toByteArray(), plan, Ending.TIMED_OUT);
    assertEquals(Ending.LOAD_OFF, run.ending());
    ReadingUncertainty uncertainty = sheet.instrument().ofOneReading();
    double own = StiffnessFinder.find(samples, uncertainty).stiffnessNPerMm();
    double played = StiffnessFinder.find(run.samples(), uncertainty).stiffnessNPerMm();
    assertEquals(own, played, 1e-5 * own);
  }

  /** Keeps what is written, and sends nothing. */
  private static final class Recorder implements ByteLine {
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();

    @Override
    public String description() {
      return "a recorder";
    }

    @Override
    public int read(byte[] into, Duration deadline) {
      try {
        Thread.sleep(1);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      return 0;
    }

    @Override
    public void write(byte[] bytes) {
      written.writeBytes(bytes);
    }

    @Override
    public void close() {
      // Nothing is held.
    }
  }
}
