package sagwright.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** The core on this computer, under the address and undefined-behaviour sanitizers. */
class FirmwareCoreTest {

  @Test
  @ExtendWith(BuiltFirmware.class)
  void theDeskTestOfTheCorePassesUnderSanitizers(BuiltFirmware.Built built) throws Exception {
    String said = BuiltFirmware.run(List.of(built.coreTest().toString()));
    assertTrue(said.endsWith(" checks, 0 failed"), said);
    assertTrue(Integer.parseInt(said.substring(0, said.indexOf(' '))) > 1_000, said);
  }

  @Test
  void aMissingToolSkipsOnADesktopAndFailsWhereTheWholeCheckRuns() {
    BuiltFirmware.skipOrFail(List.of(), true);
    BuiltFirmware.skipOrFail(List.of(), false);
    Exception skipped =
        assertThrows(
            TestAbortedException.class,
            () -> BuiltFirmware.skipOrFail(List.of("avr-gcc", "libsimavr"), false));
    assertTrue(skipped.getMessage().contains("avr-gcc"), skipped.getMessage());
    Error failed =
        assertThrows(
            AssertionFailedError.class, () -> BuiltFirmware.skipOrFail(List.of("make"), true));
    assertTrue(failed.getMessage().contains("make"), failed.getMessage());
  }

  @Test
  void theReaderOfTheseTestsKnowsTheCheckValueOfItsCrc() {
    assertEquals(0x29B1, HeadLine.crc("123456789"));
    assertTrue(HeadLine.read("$SG,0,287501,0,,00*3068").isPresent());
    assertTrue(HeadLine.read("$SG,0,287501,0,,00*3069").isEmpty());
  }
}
