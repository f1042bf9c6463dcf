package sagwright.workshop;

import java.util.Optional;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderDocument;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;

/**
 * Brings documents in: sheets become blanks with their run, orders become orders. What is there
 * already is refused unless it is to be added to; nothing is overwritten.
 */
public final class Intake {
  private final Workshop workshop;
  private final Database database;
  private final SheetReader reader;

  Intake(Workshop workshop, Database database, SheetReader reader) {
    this.workshop = workshop;
    this.database = database;
    this.reader = reader;
  }

  /**
   * What a sheet has become.
   *
   * @param run null where the sheet had none
   */
  public record Arrival(Blank blank, Run run) {}

  /**
   * @param sheet with a tag
   * @param outcome of its run; null where it has none
   * @param add whether it may join a blank that is there already: its run joins the record, a shaft
   *     that differs becomes the newest caliper entry
   */
  public Arrival sheet(Sheet sheet, RunOutcome outcome, boolean add) throws WorkshopException {
    return database.write(
        handle -> {
          Blanks blanks = workshop.blanks();
          Optional<Blank> known = blanks.find(sheet.tag());
          if (known.isPresent() && !add) {
            throw new WorkshopException(
                "shaft.tag: " + known.get().tag() + " is in this workshop already");
          }
          long actionId = workshop.actions().begin(handle, "brought in " + sheet.tag(), false);
          Blank blank = known.isPresent() ? known.get() : blanks.enter(handle, sheet, actionId);
          if (known.isPresent() && !sheet.hasSameShaftAs(newest(blank))) {
            blanks.addCaliperEntry(
                handle, blank, new Blanks.NewEntry(sheet, "brought in"), actionId);
          }
          if (!sheet.hasRun()) {
            return new Arrival(blank, null);
          }
          Runs.WholeRun run = new Runs.WholeRun(sheet, RunOrigin.IMPORTED, outcome);
          return new Arrival(blank, workshop.runs().add(handle, blank, run, actionId));
        });
  }

  /**
   * @param order with a number
   * @param add whether it may become the newer version of an order that is there already
   */
  public WorkshopOrder order(OrderDocument order, boolean add) throws WorkshopException {
    return database.write(
        handle -> {
          Orders orders = workshop.orders();
          Optional<WorkshopOrder> known = orders.find(order.order().number());
          if (known.isEmpty()) {
            return orders.enter(order);
          }
          if (!add) {
            throw new WorkshopException(
                "order: " + known.get().number() + " is in this workshop already");
          }
          return orders.change(known.get(), order);
        });
  }

  private Sheet newest(Blank blank) throws WorkshopException {
    try {
      return reader.read(workshop.blanks().caliperNow(blank).document());
    } catch (BadDocumentException e) {
      throw new WorkshopException("the record of " + blank.tag() + ": " + e.getMessage());
    }
  }
}
