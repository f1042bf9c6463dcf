package sagwright.grade;

import java.util.List;

/**
 * What an order says of the cue beside what is reckoned with: it changes no number.
 *
 * @param buttFlatMm how long the flat at the butt is; null for a butt without one
 * @param spliceWood name of the splice wood, null where there is none or nobody said
 * @param askedAs how each ask was put, in the order of {@link Order#asks()}: a word of the shop's
 *     scale, "as 25-020"; empty for a plain figure. What is beyond the list is a plain figure
 */
public record OrderRemarks(Double buttFlatMm, String spliceWood, List<String> askedAs) {
  public static final OrderRemarks NONE = new OrderRemarks(null, null, List.of());

  public OrderRemarks {
    askedAs = List.copyOf(askedAs);
  }

  /** How an ask was put; empty for a plain figure. */
  public String askedAs(int ask) {
    return ask < askedAs.size() ? askedAs.get(ask) : "";
  }
}
