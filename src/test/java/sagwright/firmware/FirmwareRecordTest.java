package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The whole way: firmware, pseudo-terminal, serial library, {@code record}, workshop. */
@ExtendWith(BuiltFirmware.class)
class FirmwareRecordTest {
  private static final BendShape SHAPE = Recorder.bend(15, 19);

  @TempDir Path folder;
  private Recorder record;

  @BeforeEach
  void takeTheBlankIn() {
    record = Recorder.into(folder);
  }

  @Test
  void aShaftOnTheBenchComesOutAsTheOneThatItIs(Simulation simulation) throws Exception {
    JsonNode answer = recorded(simulation);
    assertEquals(
        Recorder.STIFFNESS_N_PER_MM,
        answer.get("stiffnessNPerMm").asDouble(),
        1e-3 * Recorder.STIFFNESS_N_PER_MM);
    assertEquals(
        Recorder.MODULUS_MPA, answer.get("modulusMPa").asDouble(), 1e-3 * Recorder.MODULUS_MPA);
    assertEquals(0, answer.get("hysteresisPercent").asDouble(), 0.3);
    assertEquals(0, answer.at("/line/missing").asInt());
    assertEquals(0, answer.at("/line/refused").asInt());
    assertEquals(answer.get("run"), record.runs().get(1).get("run"));
  }

  @Test
  void interferenceOnTheLineIsCountedAndTheAnswerStands(Simulation simulation) throws Exception {
    JsonNode answer = recorded(simulation.with("garble", 1500));
    int refused = answer.at("/line/refused").asInt();
    assertTrue(refused > 5, answer.toString());
    // as many by the head's count, but that a spoiled line end makes one line of two
    assertEquals(refused, answer.at("/line/missing").asInt(), 3 + 0.25 * refused);
    assertEquals(
        Recorder.STIFFNESS_N_PER_MM,
        answer.get("stiffnessNPerMm").asDouble(),
        2e-3 * Recorder.STIFFNESS_N_PER_MM);
  }

  @Test
  void readingsOfABrokenWireAreKeptAndNotUsed(Simulation simulation) throws Exception {
    double fromS = SHAPE.restS() + 1;
    JsonNode answer = recorded(simulation.fault("end-stop-high:" + fromS + ":" + (fromS + 0.3)));
    assertEquals(
        Recorder.STIFFNESS_N_PER_MM,
        answer.get("stiffnessNPerMm").asDouble(),
        2e-3 * Recorder.STIFFNESS_N_PER_MM);
    assertEquals(0, answer.at("/line/missing").asInt());
    assertTrue(answer.get("warnings").toString().contains("end stop"), answer.toString());
  }

  @Test
  void aPlugPulledOnTheWayDownLeavesAnAnswerWithAWarning(Simulation simulation) throws Exception {
    JsonNode answer = recorded(simulation.with("hang-up-at", SHAPE.peakAtS() + 3));
    assertEquals(
        Recorder.STIFFNESS_N_PER_MM,
        answer.get("stiffnessNPerMm").asDouble(),
        1e-3 * Recorder.STIFFNESS_N_PER_MM);
    assertTrue(answer.get("warnings").toString().contains("lost"), answer.toString());
  }

  private JsonNode recorded(Simulation simulation) throws Exception {
    try (TerminalBench bench =
        TerminalBench.start(
            simulation
                .seconds(SHAPE.unloadedAtS() + 5)
                .with("signal", SHAPE.write(folder))
                .with("noise", 40)
                .with("gauge-noise", 1))) {
      Recorder.Printed printed = record.from(bench.path());
      assertEquals(0, printed.exitCode(), printed.err());
      return printed.json();
    }
  }
}
