package sagwright.bench.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import sagwright.bench.HeadIdentity;

class HeadFirmwareTest {
  private final HeadFirmware firmware =
      new HeadFirmware(new HeadIdentity("SG-1", "0042", "1.3"), 80);

  private String send(String bytes) {
    byte[] ascii = bytes.getBytes(StandardCharsets.ISO_8859_1);
    return firmware.take(ascii, ascii.length);
  }

  @Test
  void answersInTheMannerOfScpi() {
    assertEquals("SAGWRIGHT,SG-1,0042,1.3\n", send("*IDN?\r\n"));
    assertEquals("0,\"No error\"\n", send("SYST:ERR?\n"));
    assertEquals("", send("init\n"));
    assertTrue(firmware.isMeasuring());
    assertEquals("", send("AB"));
    assertTrue(firmware.isMeasuring());
    assertEquals("", send("OR\n"));
    assertFalse(firmware.isMeasuring());
  }

  @Test
  void whatItDoesNotKnowIsQueuedAndReadOutOldestFirst() {
    assertEquals("", send("FOO\nSAMP:RATE 5\nSAMP:RATE fast\n"));
    assertEquals("-113,\"Undefined header\"\n", send("SYST:ERR?\n"));
    assertEquals("-222,\"Data out of range\"\n", send("SYST:ERR?\n"));
    assertEquals("-222,\"Data out of range\"\n0,\"No error\"\n", send("SYST:ERR?\nSYST:ERR?\n"));
    assertEquals(80, firmware.readingsPerSecond());
    send("SAMP:RATE 230\n");
    assertEquals(230, firmware.readingsPerSecond());
  }

  @Test
  void noiseWithoutEndDoesNotFillItsMemory() {
    send("x".repeat(100_000) + "\n");
    assertEquals("-113,\"Undefined header\"\n", send("SYST:ERR?\n"));
    send("?\n".repeat(50));
    for (int i = 0; i < 9; i++) {
      assertEquals("-113,\"Undefined header\"\n", send("SYST:ERR?\n"));
    }
    assertEquals("-350,\"Queue overflow\"\n0,\"No error\"\n", send("SYST:ERR?\nSYST:ERR?\n"));
  }
}
