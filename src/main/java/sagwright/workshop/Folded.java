package sagwright.workshop;

import java.text.Normalizer;
import java.util.Locale;

/** Tags and order numbers as they must be unique: without regard to case. */
final class Folded {
  private Folded() {}

  static String of(String name) {
    return composed(name).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
  }

  /** The normaliser loads its tables: not for the plain letters that nearly all names are of. */
  private static String composed(String name) {
    boolean isPlain = name.chars().allMatch(c -> c < 128);
    return isPlain ? name : Normalizer.normalize(name, Normalizer.Form.NFC);
  }
}
