package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fazecast.jSerialComm.SerialPort;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sagwright.bench.Ending;
import sagwright.bench.HeadIdentity;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.InventedBench;
import sagwright.bench.LineOpener;
import sagwright.bench.RecordedRun;
import sagwright.bench.serial.SerialLineOpener;
import sagwright.run.Samples;

/** The firmware behind a real pseudo-terminal, opened by the library that the program uses. */
@ExtendWith(BuiltFirmware.class)
class FirmwareOnTerminalTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @TempDir Path folder;

  @Test
  void whoReadsTheSerialPortLosesNothing(Simulation simulation) throws Exception {
    try (TerminalBench bench = TerminalBench.start(simulation.seconds(20).with("noise", 40))) {
      HeadStream stream = HeadStream.of(talk(bench));
      assertEquals(List.of(), stream.refused());
      assertEquals(List.of("SAGWRIGHT,BH-328,0,1.0.0"), stream.replies());
      assertTrue(stream.missing().stream().allMatch(missing -> missing == 0));
      // 80 a second for 20 s, less the settling and what is held back
      assertEquals(1594, stream.readings().size(), 4);
      assertEquals(0, bench.letGo().get("charactersLost"));
    }
  }

  /**
   * Asks who it is, starts the readings, and reads until the simulation has ended and all is in.
   */
  private static String talk(TerminalBench bench) throws Exception {
    SerialPort port = SerialPort.getCommPort(bench.path());
    port.setBaudRate(115_200);
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 500, 0);
    assertTrue(port.openPort(), "cannot open " + bench.path());
    try {
      byte[] commands = "*IDN?\nINIT\n".getBytes(StandardCharsets.US_ASCII);
      assertEquals(commands.length, port.writeBytes(commands, commands.length));
      ByteArrayOutputStream read = new ByteArrayOutputStream();
      byte[] buffer = new byte[4096];
      Instant deadline = Instant.now().plus(PATIENCE);
      boolean ended = false;
      for (int n = 1; !ended || n > 0; ) {
        ended = ended || bench.hasEnded();
        n = port.readBytes(buffer, buffer.length);
        assertTrue(n >= 0, "the line was lost");
        read.write(buffer, 0, n);
        assertTrue(Instant.now().isBefore(deadline), "the simulation does not end");
      }
      return read.toString(StandardCharsets.ISO_8859_1);
    } finally {
      port.closePort();
    }
  }

  @Test
  void theProgramLeadsATestThroughTheFirmwareToItsEnd(Simulation simulation) throws Exception {
    BendShape shape = BendShape.to(880_000, 11_000); // 22 N, 11 mm
    AtomicLong kept = new AtomicLong();
    try (TerminalBench bench =
            TerminalBench.start(
                simulation
                    .seconds(30)
                    .with("signal", shape.write(folder))
                    .with("noise", 40)
                    .with("gauge-noise", 1));
        HeadSession session =
            HeadSession.once(
                new SerialLineOpener(bench.path(), LineOpener.ORDINARY_BAUD),
                HeadTiming.ORDINARY,
                snapshot -> {})) {
      RecordedRun run =
          session
              .begin(InventedBench.PLAN, raw -> kept.addAndGet(raw.length), PATIENCE)
              .get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
      assertEquals(Ending.LOAD_OFF, run.ending());
      assertEquals(0, run.line().refused() + run.line().gaps());
      assertEquals(22, run.greatestLoadN(), 0.1);
      assertEquals(2.0, stiffness(run.samples()), 0.004);
      assertEquals(new HeadIdentity("BH-328", "0", "1.0.0"), session.snapshot().identity());
      assertTrue(kept.get() > 20 * run.line().readings(), "each line was kept as it came");
    }
  }

  private static double stiffness(Samples samples) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < samples.size(); i++) {
      if (samples.loadN()[i] > 2 && samples.loadN()[i] < 20) {
        line.addData(samples.deflectionMm()[i], samples.loadN()[i]);
      }
    }
    return line.getSlope();
  }
}
