package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sagwright.Sagwright;
import sagwright.command.Console;

/**
 * The command {@code record} on a workshop that holds the contract's example shaft, run within the
 * test.
 */
record Recorder(Path workshop) {
  /** What the bench shows of that shaft on its set-up (docs/contract.md, section 4), N/mm. */
  static final double STIFFNESS_N_PER_MM = 4.103408682270373;

  static final double MODULUS_MPA = 12_340;

  /** Of docs/examples/calibration.json. */
  static final double NEWTON_PER_COUNT = 2.5e-5;

  private static final String EXAMPLES = "docs/examples/";
  private static final String TAG = "25-014";
  private static final ObjectMapper JSON = new ObjectMapper();

  /** A bend of that shaft by that calibration; the gauge's step is 0.001 mm. */
  static BendShape bend(double restS, double peakN) {
    return new BendShape(restS, peakN / NEWTON_PER_COUNT, 1000 * peakN / STIFFNESS_N_PER_MM);
  }

  static Recorder into(Path folder) {
    Recorder record = new Recorder(folder.resolve("workshop.db"));
    Printed imported = record.command("import", EXAMPLES + TAG + ".json");
    assertEquals(0, imported.exitCode(), imported.err());
    return record;
  }

  /** What a command printed and its exit code. */
  record Printed(int exitCode, String out, String err) {
    JsonNode json() throws Exception {
      return JSON.readTree(out);
    }
  }

  Printed from(String port, String... more) {
    List<String> arguments = new ArrayList<>(List.of("--port", port, "--blank", TAG, "--json"));
    arguments.addAll(List.of("--calibration", EXAMPLES + "calibration.json"));
    arguments.addAll(List.of("--setup", EXAMPLES + "setup.json"));
    arguments.addAll(List.of(more));
    return command("record", arguments.toArray(String[]::new));
  }

  /** The runs on the blank's record, oldest first; the first one is the imported example's own. */
  JsonNode runs() throws Exception {
    Printed blank = command("blank", "--blank", TAG, "--json");
    assertEquals(0, blank.exitCode(), blank.err());
    return blank.json().get("runs");
  }

  private Printed command(String name, String... arguments) {
    List<String> all = new ArrayList<>(List.of(name));
    all.addAll(List.of(arguments));
    all.addAll(List.of("--workshop", workshop.toString()));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(InputStream.nullInputStream(), new PrintWriter(out), new PrintWriter(err));
    int exitCode = Sagwright.run(console, all.toArray(String[]::new));
    console.out().flush();
    console.err().flush();
    return new Printed(exitCode, out.toString(), err.toString());
  }
}
