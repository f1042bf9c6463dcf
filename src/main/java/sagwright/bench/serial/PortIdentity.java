package sagwright.bench.serial;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a port is, apart from where it stands today: so that last time's port is found again though
 * its path has changed.
 *
 * @param usbSerial serial number of the USB device, "" where it has none
 * @param vendorId of the USB device, −1 where it is none
 * @param productId likewise
 * @param name as the system describes it, "" where it does not
 * @param path where it stood
 */
public record PortIdentity(
    String usbSerial, int vendorId, int productId, String name, String path) {
  private static final String SEPARATOR = "\t";
  private static final int FIELDS = 5;

  /** A port of which nothing is known but its path, as one that was typed. */
  public static PortIdentity atPath(String path) {
    return new PortIdentity("", -1, -1, "", path);
  }

  boolean isUsb() {
    return vendorId >= 0;
  }

  /** One line of text, for a settings file; {@link #fromText} reads it back. */
  public String asText() {
    return String.join(
        SEPARATOR,
        clean(usbSerial),
        Integer.toString(vendorId),
        Integer.toString(productId),
        clean(name),
        clean(path));
  }

  private static String clean(String text) {
    return text.replaceAll("\\p{Cntrl}", " ");
  }

  /** Empty where the text is not one that {@link #asText} has written. */
  public static Optional<PortIdentity> fromText(String text) {
    String[] fields = text.split(SEPARATOR, -1);
    if (fields.length != FIELDS) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new PortIdentity(
              fields[0],
              Integer.parseInt(fields[1]),
              Integer.parseInt(fields[2]),
              fields[3],
              fields[4]));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /**
   * This port among those that are there now: the one of the same USB serial number; without such a
   * number the only one of the same make; without a make the one at the same path. Never a guess:
   * where two would do, none is taken, unless one stands at the same path.
   */
  public Optional<PortDescription> findAmong(List<PortDescription> ports) {
    if (!usbSerial.isEmpty()) {
      return only(ports, p -> isSameMake(p) && p.usbSerial().equals(usbSerial));
    }
    if (isUsb()) {
      return only(ports, p -> isSameMake(p) && p.usbSerial().isEmpty());
    }
    return only(ports, p -> p.path().equals(path) && p.name().equals(name));
  }

  private boolean isSameMake(PortIdentity other) {
    return other.vendorId == vendorId && other.productId == productId;
  }

  private Optional<PortDescription> only(
      List<PortDescription> ports, Predicate<PortIdentity> fits) {
    List<PortDescription> fitting = ports.stream().filter(p -> fits.test(p.identity())).toList();
    if (fitting.size() == 1) {
      return Optional.of(fitting.get(0));
    }
    return fitting.stream().filter(p -> p.identity().path().equals(path)).findFirst();
  }
}
