package sagwright.grade;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
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
    return Stream.concat(Stream.of(ask), alsoAsked.stream()).toList();
  }

  /** The same order with another finish plan. */
  public Order finishedTo(FinishPlan other) {
    return new Order(number, species, promisedFor, notes, other, ask, alsoAsked);
  }
}
