package sagwright.workshop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import sagwright.sheet.JsonLine;

/**
 * What of a run's answer is needed to choose among thousands of blanks.
 *
 * @param ratio r = E/G as the run's sheet has it; null where it names none
 * @param species as the run's sheet has it; null where it names none, or names a ratio
 * @param assumed of the answer, a JSON array
 * @param warnings of the answer, a JSON array
 */
public record ShortAnswer(
    double modulusMPa,
    double modulusStdUncertaintyMPa,
    Double ratio,
    String species,
    String assumed,
    String warnings) {
  /** Another way of packing gets another number; what is packed otherwise is read anew. */
  private static final byte PACKING = 1;

  /** In SQL, of figures f: whether they are not there or were packed otherwise. */
  static final String WANTS_DOCUMENTS = "(f.figures is null or substr(f.figures, 1, 1) <> x'01')";

  /**
   * @param answer of docs/contract.md, section 4
   * @param document the run's sheet, with or without its readings
   */
  static ShortAnswer of(String answer, String document) {
    JsonLine answered = JsonLine.parse(answer);
    JsonLine sheet = JsonLine.parse(document);
    Double ratio = sheet.number("modulusToShearRatio");
    return new ShortAnswer(
        answered.number("modulusMPa"),
        answered.number("modulusStdUncertaintyMPa"),
        ratio,
        ratio == null ? sheet.object("shaft").text("species") : null,
        answered.json("assumed"),
        answered.json("warnings"));
  }

  byte[] packed() {
    byte[] name = species == null ? new byte[0] : species.getBytes(UTF_8);
    byte[] defaults = assumed.getBytes(UTF_8);
    byte[] warned = warnings.getBytes(UTF_8);
    return ByteBuffer.allocate(
            1
                + 3 * Double.BYTES
                + 2 * Integer.BYTES
                + name.length
                + defaults.length
                + warned.length)
        .put(PACKING)
        .putDouble(modulusMPa)
        .putDouble(modulusStdUncertaintyMPa)
        .putDouble(ratio == null ? Double.NaN : ratio)
        .putInt(name.length)
        .putInt(defaults.length)
        .put(name)
        .put(defaults)
        .put(warned)
        .array();
  }

  static boolean canUnpack(byte[] packed) {
    return packed != null && packed[0] == PACKING;
  }

  static ShortAnswer unpacked(byte[] packed) {
    ByteBuffer bytes = ByteBuffer.wrap(packed);
    bytes.get();
    double modulusMPa = bytes.getDouble();
    double uncertaintyMPa = bytes.getDouble();
    double ratio = bytes.getDouble();
    int nameLength = bytes.getInt();
    int assumedLength = bytes.getInt();
    int name = bytes.position();
    int assumed = name + nameLength;
    int warnings = assumed + assumedLength;
    return new ShortAnswer(
        modulusMPa,
        uncertaintyMPa,
        Double.isNaN(ratio) ? null : ratio,
        nameLength == 0 ? null : new String(packed, name, nameLength, UTF_8),
        new String(packed, assumed, assumedLength, UTF_8),
        new String(packed, warnings, packed.length - warnings, UTF_8));
  }
}
