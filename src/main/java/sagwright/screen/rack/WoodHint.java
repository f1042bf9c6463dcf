package sagwright.screen.rack;

import java.util.List;
import java.util.Locale;
import sagwright.wood.NearNames;
import sagwright.wood.SafeStress;

/** What is said of a wood that the table does not know, at once, while its blank is typed. */
final class WoodHint {
  /** So many near names are said; the list has more. */
  private static final int SAID = 3;

  private WoodHint() {}

  /**
   * One line; empty where the wood is known or none is typed.
   *
   * @param names of the table
   * @param isTyping whether the name may not be whole yet
   */
  static String of(String typed, List<String> names, boolean isTyping) {
    if (typed.isEmpty() || names.stream().anyMatch(typed::equalsIgnoreCase)) {
      return "";
    }
    String begun = typed.toLowerCase(Locale.ROOT);
    List<String> meant =
        names.stream().filter(name -> name.toLowerCase(Locale.ROOT).startsWith(begun)).toList();
    if (isTyping && meant.size() == 1) {
      return "Enter takes " + meant.get(0) + ".";
    }
    List<String> near = NearNames.of(typed, names).stream().limit(SAID).toList();
    String offers =
        near.isEmpty()
            ? "Down there shows those that it has."
            : "Down there offers " + String.join(", ", near) + ".";
    return typed + " is not in the table of woods.  " + offers;
  }

  /** What follows where it is kept so. */
  static String whatFollows() {
    return String.format(
        Locale.ROOT,
        "A wood not known is bent to %.0f MPa at the most, and no published figure stands beside"
            + " it.  An order for another name passes it by.",
        SafeStress.FOR_UNKNOWN_STRENGTH_MPA);
  }
}
