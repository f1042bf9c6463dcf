package sagwright.screen.choose;

import java.util.ArrayList;
import java.util.List;
import sagwright.drawing.PickLine;
import sagwright.screen.choose.ChooseView.Row;

/**
 * Which blanks are compared closely. Until the maker picks some, the best two are.
 *
 * @param byHand tags, the first pick first
 */
record Picks(List<String> byHand) {
  static final Picks NONE = new Picks(List.of());

  private static final int BY_THEMSELVES = 2;

  Picks {
    byHand = List.copyOf(byHand);
  }

  /** Picks a blank, or lets go of one that is picked; a fifth takes the place of the fourth. */
  Picks toggled(String tag) {
    List<String> next = new ArrayList<>(byHand);
    if (!next.remove(tag)) {
      if (next.size() == PickLine.MOST) {
        next.remove(next.size() - 1);
      }
      next.add(tag);
    }
    return new Picks(next);
  }

  /** The tags that are compared, of those that may serve. */
  List<String> among(List<Row> serving) {
    List<String> tags = serving.stream().map(Row::tag).toList();
    List<String> still = byHand.stream().filter(tags::contains).toList();
    return still.isEmpty() ? tags.subList(0, Math.min(BY_THEMSELVES, tags.size())) : still;
  }
}
