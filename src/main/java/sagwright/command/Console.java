package sagwright.command;

import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where a command reads and prints: UTF-8 on every machine. */
public record Console(InputStream in, PrintWriter out, PrintWriter err) {
  /** The console that the program was started from. */
  public static Console standard() {
    return new Console(
        System.in,
        new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true),
        new PrintWriter(new OutputStreamWriter(System.err, StandardCharsets.UTF_8), true));
  }

  /** One line on standard error, whatever the text holds. */
  void complain(String line) {
    err.println(line.replaceAll("\\s*[\\r\\n]+\\s*", " "));
  }
}
