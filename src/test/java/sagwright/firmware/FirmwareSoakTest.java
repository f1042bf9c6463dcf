package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sagwright.workshop.Keeper;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;

/**
 * Ten minutes of one bend test after the other, 80 readings a second, through firmware, serial line
 * and {@code record}, while one part after the other fails and comes back.
 */
@ExtendWith(BuiltFirmware.class)
@Tag("long")
class FirmwareSoakTest {
  private static final double SECONDS = 600;
  private static final BendShape SHAPE = Recorder.bend(3, 19);
  private static final double REPEAT_S = SHAPE.unloadedAtS() + 2;
  private static final int SPEED = 8;

  @TempDir Path folder;

  @Test
  @Timeout(900)
  void inTenMinutesOfFaultsNothingIsLostAndNoAnswerIsWrong(Simulation simulation) throws Exception {
    Recorder record = Recorder.into(folder);
    Path sent = folder.resolve("sent.txt");
    List<Recorder.Printed> printed = new ArrayList<>();
    Map<String, Double> report;
    try (TerminalBench bench = TerminalBench.start(faults(shafts(simulation, sent)))) {
      while (!bench.hasEnded()) {
        printed.add(record.from(bench.path(), "--timeout", "20"));
      }
      report = bench.letGo();
    }
    DescriptiveStatistics errorPercent = judge(printed);
    long keptBytes =
        compareKeptWithSent(record, Files.readString(sent, StandardCharsets.ISO_8859_1));
    assertEquals(printed.size(), record.runs().size() - 1, "each test left a run");
    assertTrue(errorPercent.getN() >= 20, () -> errorPercent.getN() + " answers");
    assertEquals(0, report.get("powerDowns"));
    assertEquals(2, report.get("resets"));
    System.out.printf(
        "soak: %d tests, %d answers, worst error %.3f %%, rms %.3f %%, %d bytes kept%n",
        printed.size(),
        errorPercent.getN(),
        Math.max(errorPercent.getMax(), -errorPercent.getMin()),
        errorPercent.getQuadraticMean(),
        keptBytes);
    System.out.println("soak: " + lines(record) + "; " + report);
    printed.stream()
        .map(Recorder.Printed::err)
        .filter(why -> !why.isEmpty())
        .forEach(System.out::print);
  }

  private Simulation shafts(Simulation simulation, Path sent) throws Exception {
    return simulation
        .seconds(SECONDS)
        .with("speed", SPEED)
        .with("signal", SHAPE.write(folder))
        .with("repeat", REPEAT_S)
        .with("noise", 60)
        .with("gauge-noise", 2)
        .with("rate-ppm", 730)
        .with("seed", 20_260_302)
        .with("out", sent);
  }

  private static Simulation faults(Simulation simulation) {
    return simulation
        .with("garble", 20_000)
        .fault("gauge-silent:90:110")
        .fault("end-stop-high:150:151")
        .fault("converter-missing:190:191.5")
        .fault("gauge-flip:220:320")
        .fault("gauge-short:335:336")
        .fault("converter-short:370:371")
        .fault("gauge-inch:400:404")
        .fault("end-stop-low:430:430.5")
        .with("restart-at", 460)
        .with("hang-at", 520)
        .with("time-wraps-at", 300)
        .with("seq-from", 60_000);
  }

  /** How far the answers are from the shaft's own stiffness; a test without one says why. */
  private static DescriptiveStatistics judge(List<Recorder.Printed> printed) throws Exception {
    DescriptiveStatistics errorPercent = new DescriptiveStatistics();
    for (Recorder.Printed one : printed) {
      if (one.exitCode() == 0) {
        JsonNode answer = one.json();
        double stiffness = answer.get("stiffnessNPerMm").asDouble();
        double error = 100 * (stiffness / Recorder.STIFFNESS_N_PER_MM - 1);
        assertEquals(0, error, 0.5, answer.toString());
        errorPercent.addValue(error);
      } else {
        assertEquals(3, one.exitCode(), one.err());
        assertEquals(1, one.err().lines().count(), one.err());
      }
    }
    return errorPercent;
  }

  private static Map<String, Long> lines(Recorder record) throws Exception {
    Map<String, Long> sums = new TreeMap<>();
    for (JsonNode run : record.runs()) {
      run.path("line")
          .properties()
          .forEach(count -> sums.merge(count.getKey(), count.getValue().asLong(), Long::sum));
    }
    return sums;
  }

  /** Each run's lines, as they were kept, lie one behind the other in what the head sent. */
  private static long compareKeptWithSent(Recorder record, String sent) throws Exception {
    long bytes = 0;
    try (Workshop workshop =
        Workshop.open(record.workshop(), new Keeper(InstantSource.system(), "soak"))) {
      List<Run> runs = workshop.runs().of(workshop.blanks().require("25-014"));
      for (Run run : runs.subList(1, runs.size())) {
        String kept = new String(workshop.runs().wire(run), StandardCharsets.ISO_8859_1);
        assertTrue(sent.contains(kept), "run " + run.id() + " is not what was sent");
        bytes += kept.length();
      }
    }
    return bytes;
  }
}
