package sagwright.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.HeadIdentity;
import sagwright.bench.HealthReport;
import sagwright.bench.LinkState;
import sagwright.bench.MainsHum;
import sagwright.sheet.CalibrationWriter;
import sagwright.sheet.JsonLine;
import sagwright.workshop.WorkshopException;

/**
 * One file about the bench for whoever helps: how the line does, what the head is, the calibration,
 * the check rod. Nothing of it tells of people, blanks, orders or places.
 */
public final class BenchHealthFile {
  private static final int ROD_READINGS = 30;
  private static final int MOST_FILES_A_DAY = 1000;

  private final String program;
  private final InstantSource clock;

  /**
   * @param program name and version
   */
  public BenchHealthFile(String program, InstantSource clock) {
    this.program = program;
    this.clock = clock;
  }

  /**
   * All that is known of the bench.
   *
   * @param inCounts whether the report's newtons and millimetres are counts and steps, there being
   *     no calibration
   */
  public record Bench(
      BenchSnapshot snapshot,
      HealthReport health,
      boolean inCounts,
      CalibrationInForce.Standing calibration,
      RodStanding rod) {}

  /** Writes a new file into a folder; one that is there already is never touched. */
  public Path write(Path folder, Bench bench) throws WorkshopException {
    String text = text(bench);
    LocalDate today = clock.instant().atZone(ZoneId.systemDefault()).toLocalDate();
    try {
      for (int n = 1; n < MOST_FILES_A_DAY; n++) {
        Path file = folder.resolve("bench-health-" + today + (n == 1 ? "" : "-" + n) + ".json");
        try {
          Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
          return file;
        } catch (FileAlreadyExistsException e) {
          // The next number is tried.
        }
      }
      throw new WorkshopException("there are too many such files of today in " + folder);
    } catch (IOException e) {
      throw new WorkshopException("cannot write into " + folder + ": " + e.getMessage());
    }
  }

  private String text(Bench bench) {
    JsonLine json =
        new JsonLine()
            .put("written", clock.instant().truncatedTo(ChronoUnit.SECONDS).toString())
            .put("program", program)
            .put("java", System.getProperty("java.version"))
            .put("system", System.getProperty("os.name") + " " + System.getProperty("os.arch"))
            .put("head", head(bench.snapshot()))
            .put("line", LineJson.of(bench.health().line()))
            .put("health", health(bench));
    Calibration calibration = bench.calibration().calibration();
    if (calibration == null) {
      json.putNull("calibration");
    } else {
      json.putJson("calibration", CalibrationWriter.write(withoutName(calibration)));
    }
    return json.putObjects("checkRod", rod(bench.rod()))
            .put("checkRodStands", bench.rod().inWords())
            .toString()
        + "\n";
  }

  private static JsonLine head(BenchSnapshot snapshot) {
    HeadIdentity identity = snapshot.identity();
    return new JsonLine()
        .put("link", snapshot.link().name())
        .put("isReading", snapshot.link() == LinkState.READING)
        .put("model", identity == null ? null : identity.model())
        .put("firmware", identity == null ? null : identity.firmware())
        .put("newestFlags", snapshot.newest() == null ? null : (double) snapshot.newest().flags())
        .put("lastRefused", snapshot.lastRefused());
  }

  private static JsonLine health(Bench bench) {
    HealthReport report = bench.health();
    JsonLine hum = null;
    if (report.hum().isPresent()) {
      MainsHum mains = report.hum().get();
      hum =
          new JsonLine()
              .put("mainsHz", mains.mainsHz())
              .put("shownAtHz", mains.shownAtHz())
              .put("amplitude", mains.amplitudeN());
    }
    JsonLine json =
        new JsonLine()
            .put("loadIn", bench.inCounts() ? "counts" : "N")
            .put("gaugeIn", bench.inCounts() ? "steps" : "mm")
            .put("readingsPerSecond", report.readingsPerSecond())
            .put("gaugePerSecond", report.gaugePerSecond())
            .put("checkSumFailures", report.checkSumFailures())
            .put("loadNoise", report.loadNoiseN())
            .put("gaugeNoise", report.gaugeNoiseMm())
            .put("loadDriftPerMinute", report.loadDriftNPerMinute())
            .put("spectrumStepHz", report.spectrum().stepHz())
            .putNumbers("spectrum", report.spectrum().amplitudeN());
    return hum == null ? json.putNull("hum") : json.put("hum", hum);
  }

  private static Calibration withoutName(Calibration c) {
    return new Calibration(
        c.made(),
        c.validDays(),
        null,
        c.load(),
        c.gauge(),
        c.frameComplianceMmPerN(),
        c.frameComplianceUncertaintyMmPerN());
  }

  private static List<JsonLine> rod(RodStanding rod) {
    List<RodReading> all = rod.readings();
    return all.subList(Math.max(0, all.size() - ROD_READINGS), all.size()).stream()
        .map(
            r ->
                new JsonLine()
                    .put("at", r.at().truncatedTo(ChronoUnit.MINUTES).toString())
                    .put("differencePercent", r.differencePercent())
                    .put("noisePercent", r.noisePercent()))
        .toList();
  }
}
