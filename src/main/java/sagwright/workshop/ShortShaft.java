package sagwright.workshop;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.sheet.Sheet;

/**
 * What of a caliper entry is needed to choose among thousands of blanks.
 *
 * @param massG null where not weighed
 * @param species null where not known
 * @param bowMm null where not measured
 */
public record ShortShaft(
    Taper taper, Double massG, String species, boolean isSpliced, Double bowMm) {
  /** Another way of packing gets another number; what is packed otherwise is read anew. */
  private static final byte PACKING = 2;

  /** In SQL, of an outline f: whether it is not there or was packed otherwise. */
  static final String WANTS_DOCUMENT = "(f.outline is null or substr(f.outline, 1, 1) <> x'02')";

  private static final SectionShape[] SHAPES = SectionShape.values();

  private static final int BYTES_BEFORE_STATIONS = 3 + 3 * Double.BYTES + Integer.BYTES;

  static ShortShaft of(Sheet sheet) {
    return new ShortShaft(
        sheet.shaft().taper(),
        sheet.shaft().massG(),
        sheet.shaft().species(),
        sheet.shaft().splice() != null,
        sheet.bowMm());
  }

  byte[] packed() {
    byte[] name = species == null ? new byte[0] : species.getBytes(StandardCharsets.UTF_8);
    int stations = taper.stationCount();
    ByteBuffer bytes =
        ByteBuffer.allocate(BYTES_BEFORE_STATIONS + 3 * Double.BYTES * stations + name.length);
    bytes.put(PACKING);
    bytes.put((byte) taper.shape().ordinal());
    bytes.put((byte) (isSpliced ? 1 : 0));
    bytes.putDouble(taper.lengthMm());
    bytes.putDouble(massG == null ? Double.NaN : massG);
    bytes.putDouble(bowMm == null ? Double.NaN : bowMm);
    bytes.putInt(stations);
    for (Station station : taper.stations()) {
      bytes.putDouble(station.xMm()).putDouble(station.depthMm()).putDouble(station.widthMm());
    }
    return bytes.put(name).array();
  }

  static boolean canUnpack(byte[] packed) {
    return packed != null && packed[0] == PACKING;
  }

  static ShortShaft unpacked(byte[] packed) {
    ByteBuffer bytes = ByteBuffer.wrap(packed);
    bytes.get();
    SectionShape shape = SHAPES[bytes.get()];
    boolean isSpliced = bytes.get() == 1;
    double lengthMm = bytes.getDouble();
    double massG = bytes.getDouble();
    double bowMm = bytes.getDouble();
    int count = bytes.getInt();
    double[] stations = new double[3 * count];
    bytes.asDoubleBuffer().get(stations);
    int name = bytes.position() + stations.length * Double.BYTES;
    return new ShortShaft(
        new Taper(shape, stations, lengthMm),
        Double.isNaN(massG) ? null : massG,
        name == packed.length
            ? null
            : new String(packed, name, packed.length - name, StandardCharsets.UTF_8),
        isSpliced,
        Double.isNaN(bowMm) ? null : bowMm);
  }
}
