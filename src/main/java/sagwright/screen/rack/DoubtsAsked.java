package sagwright.screen.rack;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Asks about each doubt once; who keeps the blank again has said that it is so. */
final class DoubtsAsked {
  private final Set<String> asked = new HashSet<>();

  /** Nothing was asked yet. */
  void begin() {
    asked.clear();
  }

  /**
   * Asks about the first that was not asked about.
   *
   * @param say hears the question
   * @param lead goes to its field
   * @return whether there was one
   */
  boolean ask(List<Doubt> doubts, Consumer<String> say, Consumer<String> lead) {
    List<Doubt> open = doubts.stream().filter(doubt -> !asked.contains(doubt.words())).toList();
    if (open.isEmpty()) {
      return false;
    }
    Doubt first = open.get(0);
    asked.add(first.words());
    say.accept(RackWords.confirm(first, open.size() == 1));
    lead.accept(first.field());
    return true;
  }
}
