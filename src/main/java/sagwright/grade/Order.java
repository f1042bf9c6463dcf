package sagwright.grade;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sagwright.finish.FinishPlan;

/**
 * What a player has ordered.
 *
 * @param number null where the document gives none
 * @param species null for any wood
 * @param promisedFor null where no day is promised
 * @param notes null where there are none
 * @param alsoAsked stiffnesses at further set-ups
 * @param remarks what else is said of the cue; it changes no number
 */
public record Order(
    String number,
    String species,
    LocalDate promisedFor,
    String notes,
    FinishPlan finish,
    Ask ask,
    List<Ask> alsoAsked,
    OrderRemarks remarks) {
  public Order {
    alsoAsked = List.copyOf(alsoAsked);
  }

  /** An order without remarks. */
  public Order(
      String number,
      String species,
      LocalDate promisedFor,
      String notes,
      FinishPlan finish,
      Ask ask,
      List<Ask> alsoAsked) {
    this(number, species, promisedFor, notes, finish, ask, alsoAsked, OrderRemarks.NONE);
  }

  /** The ask, then what else is asked. */
  public List<Ask> asks() {
    if (alsoAsked.isEmpty()) {
      return List.of(ask);
    }
    List<Ask> asks = new ArrayList<>(alsoAsked.size() + 1);
    asks.add(ask);
    asks.addAll(alsoAsked);
    return List.copyOf(asks);
  }

  /** The same order with another finish plan. */
  public Order finishedTo(FinishPlan other) {
    return new Order(number, species, promisedFor, notes, other, ask, alsoAsked);
  }
}
