package sagwright.workshop;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Which blank is promised to which order: one to one. */
public final class Promises {
  private final Database database;
  private final Actions actions;

  Promises(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /**
   * Promises a blank to an order.
   *
   * @throws WorkshopException where the blank is not free, or the order has a blank or has ended
   */
  public void make(Blank blank, WorkshopOrder order) throws WorkshopException {
    database.write(
        handle -> {
          BlankState state = new Blanks(database, actions).state(blank);
          if (state.promisedTo() != null) {
            throw new WorkshopException(
                blank.tag() + " is promised to " + state.promisedTo() + " already");
          }
          if (state.endedWhy() != null) {
            throw new WorkshopException(blank.tag() + " was ended: " + state.endedWhy());
          }
          if (!state.isFree()) {
            throw new WorkshopException(blank.tag() + " is a " + state.stage());
          }
          Optional<Blank> other = blankOf(order);
          if (other.isPresent()) {
            throw new WorkshopException(
                other.get().tag() + " is promised to " + order.number() + " already");
          }
          Optional<String> ended =
              handle
                  .select("select why from order_end_now where order_id = ?", order.id())
                  .mapTo(String.class)
                  .findFirst();
          if (ended.isPresent()) {
            throw new WorkshopException("order " + order.number() + " was ended: " + ended.get());
          }
          long actionId =
              actions.begin(handle, "promised " + blank.tag() + " to " + order.number(), true);
          return handle.execute(
              "insert into promise (action_id, blank_id, order_id) values (?, ?, ?)",
              actionId,
              blank.id(),
              order.id());
        });
  }

  /** Takes a promise back. */
  public void release(Blank blank, WorkshopOrder order) throws WorkshopException {
    database.write(
        handle -> {
          long promiseId =
              handle
                  .select(
                      "select id from promise_now where blank_id = ? and order_id = ?",
                      blank.id(),
                      order.id())
                  .mapTo(Long.class)
                  .findFirst()
                  .orElseThrow(
                      () ->
                          new WorkshopException(
                              blank.tag() + " is not promised to " + order.number()));
          long actionId =
              actions.begin(
                  handle,
                  "took back the promise of " + blank.tag() + " to " + order.number(),
                  true);
          return handle.execute(
              "insert into promise_release (action_id, promise_id) values (?, ?)",
              actionId,
              promiseId);
        });
  }

  /** The blank that is promised to an order. */
  public Optional<Blank> blankOf(WorkshopOrder order) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select b.id, b.tag from promise_now p join blank b on b.id = p.blank_id"
                        + " where p.order_id = ?",
                    order.id())
                .map((row, context) -> new Blank(row.getLong("id"), row.getString("tag")))
                .findFirst());
  }

  /** What was promised of a blank and taken back, oldest first; what was undone is left out. */
  public List<PromiseEntry> of(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select a.id as action, a.at, a.initials, o.number, 1 as made"
                        + " from promise p join action a on a.id = p.action_id"
                        + " join cue_order o on o.id = p.order_id"
                        + " where p.blank_id = ? and a.undone_at is null"
                        + " union all select a.id, a.at, a.initials, o.number, 0"
                        + " from promise_release r join action a on a.id = r.action_id"
                        + " join promise p on p.id = r.promise_id"
                        + " join cue_order o on o.id = p.order_id"
                        + " where p.blank_id = ? and a.undone_at is null order by action",
                    blank.id(),
                    blank.id())
                .map(
                    (row, context) ->
                        new PromiseEntry(
                            Instant.parse(row.getString("at")),
                            row.getString("number"),
                            row.getBoolean("made"),
                            row.getString("initials")))
                .list());
  }
}
