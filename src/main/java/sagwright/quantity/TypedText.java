package sagwright.quantity;

import java.text.Normalizer;

/**
 * Brings the many ways of writing the same thing to one: fractions like ½ become {@code 1/2} with a
 * space before them, quotes and primes become {@code '} and {@code "}, every kind of space one
 * space, the minus sign a hyphen, the raised 3 of kg/m³ a 3.
 */
final class TypedText {
  private static final char FRACTION_SLASH = '\u2044';

  private TypedText() {}

  static String plain(String typed) throws UnreadableQuantityException {
    StringBuilder plain = new StringBuilder();
    for (char c : typed.toCharArray()) {
      plain.append(plain(c, typed));
    }
    return plain.toString().replace("''", "\"").replaceAll(" +", " ").trim();
  }

  private static String plain(char c, String typed) throws UnreadableQuantityException {
    switch (c) {
      case '\u2032', '\u2018', '\u2019' -> {
        return "'";
      }
      case '\u2033', '\u201c', '\u201d' -> {
        return "\"";
      }
      case '\u2212', '\u2013', '\u2010', '\u2011' -> {
        return "-";
      }
      case '\u00b3' -> {
        return "3";
      }
      case FRACTION_SLASH -> {
        return "/";
      }
      default -> {
        return decomposed(c, typed);
      }
    }
  }

  private static String decomposed(char c, String typed) throws UnreadableQuantityException {
    if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      return " ";
    }
    if (Character.getType(c) != Character.OTHER_NUMBER) {
      return String.valueOf(c);
    }
    String parts = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
    int slash = parts.indexOf(FRACTION_SLASH);
    if (slash < 1 || slash == parts.length() - 1) {
      throw new UnreadableQuantityException(typed.strip() + ": cannot read " + c);
    }
    return " " + parts.replace(FRACTION_SLASH, '/') + " ";
  }
}
