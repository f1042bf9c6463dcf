package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fazecast.jSerialComm.SerialPort;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The firmware behind a real pseudo-terminal, opened by the library that the program uses. */
@ExtendWith(BuiltFirmware.class)
class FirmwareOnTerminalTest {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  @Test
  void aProgramTalksToTheHeadThroughItsSerialPortAndLosesNothing(Simulation simulation)
      throws Exception {
    Process bench = simulation.seconds(20).with("noise", 40).startOnTerminal();
    try (BufferedReader said =
        new BufferedReader(
            new InputStreamReader(bench.getInputStream(), StandardCharsets.US_ASCII))) {
      String first = said.readLine();
      assertNotNull(first, "the simulated bench ended at once");
      HeadStream stream = HeadStream.of(talk(first.substring("port ".length()), said));
      assertEquals(List.of(), stream.refused());
      assertEquals(List.of("SAGWRIGHT,BH-328,0,1.0.0"), stream.replies());
      assertTrue(stream.missing().stream().allMatch(missing -> missing == 0));
      // 80 a second for 20 s, less the settling and what is held back
      assertEquals(1594, stream.readings().size(), 4);
      bench.getOutputStream().close();
      assertTrue(bench.waitFor(10, TimeUnit.SECONDS), "it ends when its standard input is closed");
      assertEquals(0, bench.exitValue());
    } finally {
      bench.destroyForcibly();
    }
  }

  /**
   * Asks who it is, starts the readings, and reads until the simulation has ended and all is in.
   */
  private static byte[] talk(String path, BufferedReader said) throws Exception {
    SerialPort port = SerialPort.getCommPort(path);
    port.setBaudRate(115_200);
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, 500, 0);
    assertTrue(port.openPort(), "cannot open " + path);
    try {
      byte[] commands = "*IDN?\nINIT\n".getBytes(StandardCharsets.US_ASCII);
      assertEquals(commands.length, port.writeBytes(commands, commands.length));
      ByteArrayOutputStream read = new ByteArrayOutputStream();
      byte[] buffer = new byte[4096];
      Instant deadline = Instant.now().plus(PATIENCE);
      boolean ended = false;
      for (int n = 1; !ended || n > 0; ) {
        ended = ended || said.ready() && "end".equals(said.readLine());
        n = port.readBytes(buffer, buffer.length);
        assertTrue(n >= 0, "the line was lost");
        read.write(buffer, 0, n);
        assertTrue(Instant.now().isBefore(deadline), "the simulation does not end");
      }
      return read.toByteArray();
    } finally {
      port.closePort();
    }
  }
}
