package sagwright.command;

import java.io.ByteArrayInputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import sagwright.Sagwright;

/** One command run inside the test: its exit code and what it printed. */
record CommandRun(int exitCode, String out, String err) {
  static CommandRun of(String... args) {
    return withInput("", args);
  }

  static CommandRun withInput(String input, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console =
        new Console(
            new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
            new PrintWriter(out),
            new PrintWriter(err));
    int exitCode = Sagwright.run(console, args);
    console.out().flush();
    console.err().flush();
    return new CommandRun(exitCode, out.toString(), err.toString());
  }

  String[] outLines() {
    return out.lines().toArray(String[]::new);
  }

  String[] errLines() {
    return err.lines().toArray(String[]::new);
  }
}
