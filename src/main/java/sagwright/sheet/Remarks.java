package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import sagwright.grade.OrderRemarks;

/**
 * What this program itself writes under keys that begin with {@code x-}: a butt flat, the splice
 * wood's name, how an ask was put. Where another program has put something else there, it is no
 * remark, and no fault.
 */
final class Remarks {
  /** In {@code finish}: the flat's length in mm. */
  static final String BUTT_FLAT = "x-buttFlatMm";

  /** In {@code finish.splice}. */
  static final String SPLICE_WOOD = "x-wood";

  /** In {@code ask} and each of {@code alsoAsked}. */
  static final String ASKED_AS = "x-askedAs";

  /** These are written anew with each version, or left out. */
  static final Set<String> OURS = Set.of(BUTT_FLAT, SPLICE_WOOD, ASKED_AS);

  private Remarks() {}

  static OrderRemarks of(JsonNode order) {
    JsonNode finish = order.path("finish");
    JsonNode flat = finish.path(BUTT_FLAT);
    List<String> askedAs = new ArrayList<>();
    askedAs.add(askedAs(order.path("ask")));
    order.path("alsoAsked").forEach(ask -> askedAs.add(askedAs(ask)));
    return new OrderRemarks(
        flat.isNumber() && flat.doubleValue() > 0 && Double.isFinite(flat.doubleValue())
            ? flat.doubleValue()
            : null,
        finish.path("splice").path(SPLICE_WOOD).textValue(),
        askedAs.stream().allMatch(String::isEmpty) ? List.of() : askedAs);
  }

  private static String askedAs(JsonNode ask) {
    return ask.path(ASKED_AS).asText("");
  }
}
