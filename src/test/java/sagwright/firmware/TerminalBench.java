package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A simulated bench behind a pseudo-terminal, for as long as a test needs it. */
final class TerminalBench implements AutoCloseable {
  private final Path reportFile = Files.createTempFile("bench-report", ".txt");
  private final Process process;
  private final BufferedReader said;
  private final String path;

  private TerminalBench(Simulation simulation) throws IOException {
    this.process = simulation.startOnTerminal(reportFile);
    this.said =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
    String first = said.readLine();
    assertNotNull(first, "the simulated bench ended at once");
    this.path = first.substring("port ".length());
  }

  static TerminalBench start(Simulation simulation) throws IOException {
    return new TerminalBench(simulation);
  }

  /** The terminal's path, to be opened as a serial port. */
  String path() {
    return path;
  }

  /** Whether the simulated time is over; what was sent can still be read. */
  boolean hasEnded() throws IOException {
    return said.ready() && "end".equals(said.readLine());
  }

  /** Lets it go: nothing more will be read. Returns the report of the simulated parts. */
  Map<String, Double> letGo() throws IOException, InterruptedException {
    process.getOutputStream().close();
    assertTrue(process.waitFor(10, TimeUnit.SECONDS), "it ends when its standard input is closed");
    assertEquals(0, process.exitValue());
    return Simulation.reportOf(Files.readString(reportFile));
  }

  @Override
  public void close() throws IOException {
    process.destroyForcibly();
    said.close();
    Files.deleteIfExists(reportFile);
  }
}
