package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import sagwright.sheet.OrderDocument;

/** Orders and their versions. */
public final class Orders {
  private final Database database;
  private final Actions actions;

  Orders(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  private static WorkshopOrder orderOf(ResultSet row) throws SQLException {
    return new WorkshopOrder(
        row.getLong("id"),
        row.getString("number"),
        row.getLong("version_id"),
        row.getString("document"));
  }

  /** By its number, without regard to case. */
  public Optional<WorkshopOrder> find(String number) throws WorkshopException {
    return database.readPlainly(
        connection ->
            PlainRows.first(
                connection,
                "select * from order_now where folded = ?",
                Folded.of(number),
                Orders::orderOf));
  }

  public WorkshopOrder require(String number) throws WorkshopException {
    return find(number)
        .orElseThrow(
            () -> new WorkshopException("there is no order " + number + " in this workshop"));
  }

  /** All that were not withdrawn, by number. */
  public List<WorkshopOrder> all() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select * from order_now order by folded")
                .map((row, context) -> orderOf(row))
                .list());
  }

  /** Those that have no blank promised and have not been ended, by number. */
  public List<WorkshopOrder> open() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select * from order_now where id not in (select order_id from promise_now)"
                        + " and id not in (select order_id from order_end_now) order by folded")
                .map((row, context) -> orderOf(row))
                .list());
  }

  /** One version by its number, whether it is the newest or not. */
  public String version(long versionId) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select document from order_version where id = ?", versionId)
                .mapTo(String.class)
                .one());
  }

  /**
   * Enters a new order.
   *
   * @throws WorkshopException also where the number is taken, without regard to case
   */
  public WorkshopOrder enter(OrderDocument order) throws WorkshopException {
    String number = order.order().number();
    return database.write(
        handle -> {
          Optional<WorkshopOrder> taken = find(number);
          if (taken.isPresent()) {
            throw new WorkshopException("there is an order " + taken.get().number() + " already");
          }
          long actionId = actions.begin(handle, "took order " + number, true);
          long id =
              handle
                  .createUpdate(
                      "insert into cue_order (action_id, number, folded) values (?, ?, ?)")
                  .bind(0, actionId)
                  .bind(1, number)
                  .bind(2, Folded.of(number))
                  .executeAndReturnGeneratedKeys("id")
                  .mapTo(Long.class)
                  .one();
          addVersion(handle, id, order.json(), actionId);
          return require(number);
        });
  }

  /** Adds an order's newest version. */
  public WorkshopOrder change(WorkshopOrder order, OrderDocument document)
      throws WorkshopException {
    return database.write(
        handle -> {
          long actionId = actions.begin(handle, "changed order " + order.number(), true);
          addVersion(handle, order.id(), document.json(), actionId);
          return require(order.number());
        });
  }

  private static void addVersion(Handle handle, long orderId, String document, long actionId) {
    handle.execute(
        "insert into order_version (action_id, order_id, document) values (?, ?, ?)",
        actionId,
        orderId,
        document);
  }

  /** Ends an order that is delivered or called off. Its record stays. */
  public void end(WorkshopOrder order, String why) throws WorkshopException {
    database.write(
        handle -> {
          long actionId = actions.begin(handle, "ended order " + order.number() + ": " + why, true);
          return handle.execute(
              "insert into order_end (action_id, order_id, why) values (?, ?, ?)",
              actionId,
              order.id(),
              why);
        });
  }
}
