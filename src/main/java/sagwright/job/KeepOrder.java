package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.grade.Order;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderDocument;
import sagwright.sheet.OrderReader;
import sagwright.sheet.OrderWriter;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Takes orders, changes them, and reads them again. */
public final class KeepOrder {
  private final Workshop workshop;
  private final GradeAgain gradeAgain;

  public KeepOrder(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /**
   * An order as it is kept.
   *
   * @param blank the tag that is promised to it, empty for none
   */
  public record Kept(Order order, String blank) {}

  /**
   * A new order.
   *
   * @throws WorkshopException also where something of it cannot be: the line says what
   */
  public void take(Order order) throws WorkshopException {
    try {
      workshop.orders().enter(document(OrderWriter.write(order)));
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage());
    }
  }

  /** A newer version of an order that is there; its keys that begin with x- are carried along. */
  public void change(Order order) throws WorkshopException {
    WorkshopOrder former = workshop.orders().require(order.number());
    try {
      gradeAgain.of(
          workshop.orders().change(former, document(OrderWriter.write(order, former.document()))));
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage());
    }
  }

  /** Read by the same reader as every other order, so that the same rules hold. */
  private static OrderDocument document(String json) throws BadDocumentException {
    return OrderReader.readDocument(json).requireNumber();
  }

  /** Every order, newest first. */
  public List<Kept> all() throws WorkshopException {
    List<Kept> kept = new ArrayList<>();
    for (WorkshopOrder stored : workshop.orders().all()) {
      String blank = workshop.promises().blankOf(stored).map(Blank::tag).orElse("");
      kept.add(0, new Kept(read(stored), blank));
    }
    return kept;
  }

  private static Order read(WorkshopOrder stored) throws WorkshopException {
    try {
      return OrderReader.read(stored.document());
    } catch (BadDocumentException e) {
      throw new WorkshopException("order " + stored.number() + ": " + e.getMessage());
    }
  }
}
