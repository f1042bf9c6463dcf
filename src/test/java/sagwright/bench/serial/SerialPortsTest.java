package sagwright.bench.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SerialPortsTest {
  private static final PortIdentity HEAD =
      new PortIdentity("A1B2", 0x2341, 0x0043, "USB serial device", "/dev/ttyACM0");
  private static final PortIdentity SAME_MAKE =
      new PortIdentity("C3D4", 0x2341, 0x0043, "USB serial device", "/dev/ttyACM1");
  private static final PortIdentity NUMBERLESS =
      new PortIdentity("", 0x1A86, 0x7523, "USB2.0-Ser!", "/dev/ttyUSB0");
  private static final PortIdentity BUILT_IN =
      new PortIdentity("", -1, -1, "Physical Port S0", "/dev/ttyS0");

  private static PortDescription at(PortIdentity p, String path) {
    return PortDescription.of(
        new PortIdentity(p.usbSerial(), p.vendorId(), p.productId(), p.name(), path), "");
  }

  @Test
  void everyPortOfThisComputerIsDescribedInOneLine() {
    for (PortDescription port : SerialPorts.list()) {
      assertTrue(port.inWords().contains(port.path()), port.inWords());
      assertTrue(port.inWords().lines().count() == 1, port.inWords());
    }
  }

  @Test
  void aPlainDescriptionTellsPortsApart() {
    assertEquals(
        "USB serial device by Arduino, on USB, serial number A1B2 (/dev/ttyACM0)",
        PortDescription.of(HEAD, "Arduino").inWords());
    assertEquals(
        "Physical Port S0, built in or not on USB (/dev/ttyS0)",
        PortDescription.of(BUILT_IN, "").inWords());
  }

  @Test
  void lastTimesPortIsFoundByItsSerialNumberThoughItsPathHasChanged() {
    List<PortDescription> now = List.of(at(SAME_MAKE, "/dev/ttyACM0"), at(HEAD, "/dev/ttyACM1"));
    assertEquals("/dev/ttyACM1", HEAD.findAmong(now).orElseThrow().path());
    assertEquals(Optional.empty(), HEAD.findAmong(List.of(at(SAME_MAKE, "/dev/ttyACM0"))));
  }

  @Test
  void withoutASerialNumberTheOnlyOneOfItsMakeIsTakenAndNoGuessIsMadeAmongSeveral() {
    List<PortDescription> one = List.of(at(BUILT_IN, "/dev/ttyS0"), at(NUMBERLESS, "/dev/ttyUSB3"));
    assertEquals("/dev/ttyUSB3", NUMBERLESS.findAmong(one).orElseThrow().path());
    List<PortDescription> two =
        List.of(at(NUMBERLESS, "/dev/ttyUSB1"), at(NUMBERLESS, "/dev/ttyUSB2"));
    assertEquals(Optional.empty(), NUMBERLESS.findAmong(two));
    List<PortDescription> inPlace =
        List.of(at(NUMBERLESS, "/dev/ttyUSB1"), at(NUMBERLESS, "/dev/ttyUSB0"));
    assertEquals("/dev/ttyUSB0", NUMBERLESS.findAmong(inPlace).orElseThrow().path());
  }

  @Test
  void aPortThatIsNoUsbDeviceIsFoundAtItsPathAlone() {
    assertEquals(
        "/dev/ttyS0", BUILT_IN.findAmong(List.of(at(BUILT_IN, "/dev/ttyS0"))).orElseThrow().path());
    assertEquals(Optional.empty(), BUILT_IN.findAmong(List.of(at(BUILT_IN, "/dev/ttyS1"))));
    assertEquals(Optional.empty(), HEAD.findAmong(List.of()));
  }

  @Test
  void anIdentityIsWrittenAndReadBack() {
    for (PortIdentity p : List.of(HEAD, NUMBERLESS, BUILT_IN)) {
      assertEquals(Optional.of(p), PortIdentity.fromText(p.asText()));
    }
    assertEquals(Optional.empty(), PortIdentity.fromText("/dev/ttyACM0"));
    assertEquals(Optional.empty(), PortIdentity.fromText("a\tb\tc\td\te"));
  }
}
