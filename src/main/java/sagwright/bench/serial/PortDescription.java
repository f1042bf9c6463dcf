package sagwright.bench.serial;

import java.util.Locale;

/**
 * A port as it can be chosen from a list.
 *
 * @param identity what it is; its path opens it
 * @param inWords one plain line that tells it from the others
 */
public record PortDescription(PortIdentity identity, String inWords) {
  /** From what the system says of a port; whatever it does not say may be null or empty. */
  static PortDescription of(PortIdentity identity, String maker) {
    StringBuilder words = new StringBuilder();
    String name = identity.name().isEmpty() ? "serial port" : identity.name();
    words.append(name);
    if (isKnown(maker) && !name.toLowerCase(Locale.ROOT).contains(maker.toLowerCase(Locale.ROOT))) {
      words.append(" by ").append(maker);
    }
    if (identity.isUsb()) {
      words.append(", on USB");
      if (!identity.usbSerial().isEmpty()) {
        words.append(", serial number ").append(identity.usbSerial());
      }
    } else {
      words.append(", built in or not on USB");
    }
    return new PortDescription(identity, words + " (" + identity.path() + ")");
  }

  static boolean isKnown(String text) {
    return text != null && !text.isBlank() && !text.strip().equalsIgnoreCase("unknown");
  }

  public String path() {
    return identity.path();
  }
}
