package sagwright.screen;

import java.util.Locale;

/** Words that come from below, as a sentence on a page. */
public final class Sentence {
  private Sentence() {}

  /** The words with a capital at the start and a stop at the end; empty words stay empty. */
  public static String of(String words) {
    if (words.isBlank()) {
      return "";
    }
    int first = words.offsetByCodePoints(0, 1);
    String begun = words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    boolean ends = ".!?…:".indexOf(words.charAt(words.length() - 1)) >= 0;
    return ends ? begun : begun + ".";
  }
}
