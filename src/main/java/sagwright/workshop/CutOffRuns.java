package sagwright.workshop;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import sagwright.bench.LoadLimits;

/** Runs that were entered and neither closed nor are going on. */
public final class CutOffRuns {
  private final Database database;
  private final JournalFolder journals;

  CutOffRuns(Database database, JournalFolder journals) {
    this.database = database;
    this.journals = journals;
  }

  /** How many there are now, without taking any. */
  public int count() throws WorkshopException {
    int count = 0;
    for (Entered entered : entered()) {
      count += journals.isGoingOn(entered.runId()) ? 0 : 1;
    }
    return count;
  }

  /** Takes all that were cut off, oldest first; a run that goes on in another program is left. */
  public List<CutOffRun> takeAll() throws WorkshopException {
    List<CutOffRun> taken = new ArrayList<>();
    List<Entered> all = entered();
    journals.deleteAllBut(all.stream().map(Entered::runId).toList());
    for (Entered entered : all) {
      Optional<RunJournal> journal = journals.take(entered.runId());
      if (journal.isPresent() && isClosed(entered.runId())) {
        journal.get().close(); // by another program, since it was looked up
      } else if (journal.isPresent()) {
        byte[] wire = journals.read(entered.runId());
        taken.add(new CutOffRun(entered.start(), wire, journal.get()));
      }
    }
    return taken;
  }

  private record Entered(long runId, RunStart start) {}

  private static final RowMapper<Entered> ENTERED =
      (row, context) ->
          new Entered(
              row.getLong("id"),
              new RunStart(
                  new Blank(row.getLong("blank_id"), row.getString("tag")),
                  Instant.parse(row.getString("started_at")),
                  row.getString("document"),
                  row.getString("calibration"),
                  row.getString("target_n") == null
                      ? null
                      : new LoadLimits(row.getDouble("target_n"), row.getDouble("safe_n")),
                  row.getString("number") == null
                      ? null
                      : new WorkshopOrder(
                          row.getLong("order_id"),
                          row.getString("number"),
                          row.getLong("version_id"),
                          row.getString("order_document"))));

  private boolean isClosed(long runId) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select 1 from run_closing where run_id = ?", runId)
                .mapTo(Integer.class)
                .findFirst()
                .isPresent());
  }

  private List<Entered> entered() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select r.*, b.tag, o.number, o.version_id, o.document as order_document"
                        + " from run r join blank b on b.id = r.blank_id"
                        + " left join order_now o on o.id = r.order_id"
                        + " where not exists"
                        + " (select 1 from run_closing c where c.run_id = r.id) order by r.id")
                .map(ENTERED)
                .list());
  }
}
