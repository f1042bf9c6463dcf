package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.finish.FinishPlan;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderReader;
import sagwright.workshop.WorkshopException;

/** What a newer version of an order asks otherwise. */
final class OrderChange {
  private OrderChange() {}

  static List<String> between(String before, String now) throws WorkshopException {
    try {
      return between(OrderReader.read(before), OrderReader.read(now));
    } catch (BadDocumentException e) {
      throw new WorkshopException("an order on the record: " + e.getMessage());
    }
  }

  private static List<String> between(Order before, Order now) {
    List<String> because = new ArrayList<>();
    Ask was = before.ask();
    Ask is = now.ask();
    if (was.stiffnessNPerMm() != is.stiffnessNPerMm()) {
      because.add(
          "the order asks "
              + PlainNumber.of(is.stiffnessNPerMm())
              + " N/mm, not "
              + PlainNumber.of(was.stiffnessNPerMm()));
    }
    if (was.tolerancePercent() != is.tolerancePercent()) {
      because.add(
          "it asks ± "
              + PlainNumber.of(is.tolerancePercent())
              + " %, not ± "
              + PlainNumber.of(was.tolerancePercent())
              + " %");
    }
    if (!was.setUp().equals(is.setUp())) {
      because.add("it asks at another set-up");
    }
    if (!before.alsoAsked().equals(now.alsoAsked())) {
      because.add("it asks otherwise at its further set-ups");
    }
    ofFinish(before.finish(), now.finish(), because);
    if (because.isEmpty()) {
      because.add("the order was changed, though not in what stiffness rests on");
    }
    return because;
  }

  private static void ofFinish(FinishPlan was, FinishPlan is, List<String> because) {
    boolean isSameTaper =
        was.lengthMm() == is.lengthMm() && was.taper().stations().equals(is.taper().stations());
    if (!isSameTaper) {
      because.add("its taper was changed");
    } else if (!was.equals(is.shapedAs(was.taper()))) {
      because.add("its finish plan was changed");
    }
  }
}
