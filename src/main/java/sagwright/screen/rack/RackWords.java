package sagwright.screen.rack;

/** What the foot of the rack says. */
final class RackWords {
  private RackWords() {}

  /** What to do on the list. */
  static final String LIST = "Enter opens a record.  Ctrl N writes a blank down.";

  static final String LIST_MORE =
      "Ctrl S sorts by the next column, Ctrl R from the other end.  Ctrl Z takes the last action"
          + " back.  Type ended to see those that are no more.";

  /** What to do with a record. */
  static final String RECORD = "Enter lays it on the bench.  M measures it anew.";

  static final String RECORD_MORE =
      "W weighs, P says how it is spliced, A adds a note, E ends it, Ctrl Z takes the last action"
          + " back.  What was measured stays: a newer entry follows it.";

  /** The same where the blank is no more. */
  static String ended(String what, String why) {
    return what + " is no more: " + why + ".";
  }

  static final String ENDED_MORE =
      "What was measured stays to be read.  A adds a note, Esc goes back to the rack.";

  /** Two lines: what comes first, and what is less urgent. */
  record Said(String todo, String more) {}

  private static final String OTHER_UNITS = "Other units may be typed: 58 in, 18½ oz, 147.3 cm.";

  static final Said FORM = new Said("Enter goes on.  Ctrl Enter keeps it.", OTHER_UNITS);

  /** While it is typed. */
  static Said misread(Doubt doubt) {
    return new Said("Misread? " + doubt.words() + ".", OTHER_UNITS);
  }

  /**
   * The same where it is to be kept.
   *
   * @param isLast whether nothing else is doubted
   */
  static String confirm(Doubt doubt, boolean isLast) {
    String yes = isLast ? "keeps it as it is." : "says that it is so.";
    return "Misread? " + doubt.words() + ".  Ctrl Enter again " + yes;
  }
}
