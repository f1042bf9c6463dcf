package sagwright.sheet;

/** Tags of blanks and numbers of orders (docs/contract.md, section 7). */
public final class Names {
  public static final int GREATEST_LENGTH = 32;

  private Names() {}

  /** Whether a text is 1 to 32 letters, digits, {@code - _ . /}. */
  public static boolean isName(String text) {
    return !text.isEmpty()
        && text.codePointCount(0, text.length()) <= GREATEST_LENGTH
        && text.codePoints().allMatch(Names::mayStand);
  }

  static void require(String key, String name) throws BadDocumentException {
    if (!isName(name)) {
      throw new BadDocumentException(
          key, "must be 1 to " + GREATEST_LENGTH + " letters, digits, - _ . or /");
    }
  }

  private static boolean mayStand(int c) {
    return Character.isLetterOrDigit(c) || c == '-' || c == '_' || c == '.' || c == '/';
  }
}
