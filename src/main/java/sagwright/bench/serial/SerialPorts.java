package sagwright.bench.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The serial ports of this computer. Looking for them may take a second: not on the event thread.
 */
public final class SerialPorts {
  private SerialPorts() {}

  /**
   * All that are there now, in the order of their paths; which one to use is for a person to say.
   */
  public static List<PortDescription> list() {
    return Arrays.stream(SerialPort.getCommPorts())
        .map(SerialPorts::describe)
        .sorted(Comparator.comparing(PortDescription::path))
        .toList();
  }

  /** What is known of the port at a path; a path that is not listed is taken as it was typed. */
  public static PortIdentity identityAt(String path) {
    return list().stream()
        .map(PortDescription::identity)
        .filter(p -> p.path().equals(path))
        .findFirst()
        .orElse(PortIdentity.atPath(path));
  }

  private static PortDescription describe(SerialPort port) {
    PortIdentity identity =
        new PortIdentity(
            known(port.getSerialNumber()),
            port.getVendorID() > 0 ? port.getVendorID() : -1,
            port.getProductID() > 0 ? port.getProductID() : -1,
            known(port.getPortDescription()),
            port.getSystemPortPath());
    return PortDescription.of(identity, known(port.getManufacturer()));
  }

  private static String known(String text) {
    return PortDescription.isKnown(text) ? text.strip() : "";
  }
}
