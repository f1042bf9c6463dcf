package sagwright.workshop;

import java.text.Normalizer;
import java.util.Locale;

/** Tags and order numbers as they must be unique: without regard to case. */
final class Folded {
  private Folded() {}

  static String of(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFC)
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }
}
