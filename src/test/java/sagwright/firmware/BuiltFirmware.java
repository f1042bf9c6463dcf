package sagwright.firmware;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Builds firmware, simulated bench and desk test by {@code make}, once a test run, and hands a
 * {@link Simulation} or the {@link Built} itself to a test that asks for it. Where a tool is
 * missing each test is skipped and says which; with CI set in the environment it fails.
 */
final class BuiltFirmware implements BeforeEachCallback, ParameterResolver {
  static final Path SOURCES = Path.of("firmware-notes");
  private static final Path OUT = Path.of("target", "firmware").toAbsolutePath();

  /** What there is to run, or the names of the tools without which there is nothing. */
  record Built(List<String> missingTools, Path out) {
    Path head() {
      return out.resolve("head.elf");
    }

    Path bench() {
      return out.resolve("bench-sim");
    }

    Path coreTest() {
      return out.resolve("core-test");
    }
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    skipOrFail(built(context).missingTools(), System.getenv("CI") != null);
  }

  /** Aborts the test where tools are missing: as skipped, or as failed where {@code mustRun}. */
  static void skipOrFail(List<String> missingTools, boolean mustRun) {
    String message = "not installed, so the firmware was not tried: " + missingTools;
    if (mustRun) {
      Assertions.assertTrue(missingTools.isEmpty(), message);
    }
    Assumptions.assumeTrue(missingTools.isEmpty(), message);
  }

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    Class<?> type = parameter.getParameter().getType();
    return type == Simulation.class || type == Built.class;
  }

  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
    Built built = built(context);
    return parameter.getParameter().getType() == Built.class
        ? built
        : new Simulation(built.bench(), built.head());
  }

  private static Built built(ExtensionContext context) {
    return context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(BuiltFirmware.class))
        .getOrComputeIfAbsent(Built.class, type -> build(), Built.class);
  }

  private static Built build() {
    List<String> missing = new ArrayList<>();
    try {
      run(List.of("make", "--version"));
      make(SOURCES, "tools").lines().forEach(missing::add);
    } catch (IOException nothingToRun) {
      missing.add("make");
    }
    if (missing.isEmpty()) {
      try {
        make(SOURCES, "OUT=" + OUT);
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
    return new Built(missing, OUT);
  }

  /** Runs make in a folder; what it printed. */
  static String make(Path folder, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of("make", "-s", "-C", folder.toString()));
    command.addAll(List.of(arguments));
    return run(command);
  }

  /** Runs a command to its end; what it printed. Throws where it cannot be started. */
  static String run(List<String> command) throws IOException {
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String output =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).trim();
    try {
      Assertions.assertTrue(process.waitFor(120, TimeUnit.SECONDS), "still running: " + command);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
    Assertions.assertEquals(0, process.exitValue(), () -> command + " said:\n" + output);
    return output;
  }
}
