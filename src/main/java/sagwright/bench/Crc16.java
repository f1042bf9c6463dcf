package sagwright.bench;

/**
 * CRC-16/CCITT-FALSE: polynomial 1021, start FFFF, most significant bit first, nothing reflected;
 * "123456789" gives 29B1 (Ross Williams, "A painless guide to CRC error detection algorithms",
 * 1993, and the catalogue of parametrised CRC algorithms that continues it). It finds every burst
 * of up to 16 bits and, in lines as short as these, every three flipped bits.
 */
final class Crc16 {
  private static final int POLYNOMIAL = 0x1021;
  private static final int START = 0xFFFF;

  private Crc16() {}

  /** Over the bytes from {@code from} (included) to {@code to} (not included). */
  static int of(byte[] bytes, int from, int to) {
    int crc = START;
    for (int i = from; i < to; i++) {
      crc ^= (bytes[i] & 0xFF) << 8;
      for (int bit = 0; bit < 8; bit++) {
        crc = (crc & 0x8000) == 0 ? crc << 1 : crc << 1 ^ POLYNOMIAL;
      }
      crc &= 0xFFFF;
    }
    return crc;
  }
}
