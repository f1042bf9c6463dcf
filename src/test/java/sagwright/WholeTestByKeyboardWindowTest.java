package sagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The main job end to end in the real window, by keyboard alone: from an empty workshop to a grade
 * on the blank's record, with the practice bench standing in for hardware.
 */
@CacioTest
@Tag("window")
class WholeTestByKeyboardWindowTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private static JsonNode record(Path workshop, String tag) throws Exception {
    StringWriter out = new StringWriter();
    assertEquals(0, printRecord(out, workshop, tag), out.toString());
    return JSON.readTree(out.toString());
  }

  private static int printRecord(StringWriter out, Path workshop, String tag) {
    return ProgramUnderTest.run(
        out, "blank", "--workshop", workshop.toString(), "--blank", tag, "--json");
  }

  @Test
  void fromAnEmptyWorkshopToAGradeOnTheRecord() throws Exception {
    Path workshop = folder.resolve("workshop.db");
    try (ProgramUnderTest program =
        ProgramUnderTest.start("window", "--workshop", workshop.toString(), "--seed", "5")) {
      program.waitForFocusOn("bench.tag");
      program.press(KeyEvent.VK_F3);
      newOrder(program);
      program.press(KeyEvent.VK_F2);
      newBlank(program);
      program.waitUntil("the blank is on the record", () -> isThere(workshop, "26-001"));
      program.waitForFocusOn("Rack.control");
      program.press(KeyEvent.VK_ENTER); // lays it on the bench
      program.waitForFocusOn("Bench.control");
      program.press(KeyEvent.VK_O);
      program.waitForFocusOn("bench.order");
      program.line("R-0001");
      program.waitForFocusOn("Bench.control");
      program.press(KeyEvent.VK_SPACE);
      program.waitUntil("the grade is on the record", () -> grades(workshop) == 1);

      JsonNode record = record(workshop, "26-001");
      assertEquals(1, record.get("runs").size());
      assertTrue(record.at("/runs/0/modulusMPa").asDouble() > 5000);
      assertEquals("R-0001", record.at("/grades/0/order").asText());
    }
  }

  private static void newOrder(ProgramUnderTest program) {
    program.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("order.length");
    program.line("58 in");
    program.line("9,5");
    program.line("29");
    program.press(KeyEvent.VK_F7); // no knots: on to the ask in the middle
    program.waitForFocusOn("ask.middle");
    program.type("2,5");
    program.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("orders.table");
  }

  private static void newBlank(ProgramUnderTest program) {
    program.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    program.waitForFocusOn("blank.tag");
    program.line("26-001");
    program.line("European ash");
    program.line("near size");
    program.press(KeyEvent.VK_ENTER); // round
    program.line("147,3 cm");
    program.line("410");
    program.line("11,2");
    for (String left : List.of("grain lines", "run-out", "looks", "pitch")) {
      program.waitForFocusOn("blank." + left);
      program.press(KeyEvent.VK_ENTER); // left open
    }
    program.waitForFocusOn("stations.1.1");
    program.line("0");
    program.line("12,5");
    program.press(KeyEvent.VK_ENTER); // width as depth
    program.line("1473");
    program.type("31");
    program.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
  }

  private static boolean isThere(Path workshop, String tag) {
    return printRecord(new StringWriter(), workshop, tag) == 0;
  }

  private static int grades(Path workshop) {
    try {
      return record(workshop, "26-001").get("grades").size();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }
}
