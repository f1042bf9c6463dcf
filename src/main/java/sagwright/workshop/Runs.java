package sagwright.workshop;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import org.jdbi.v3.core.Handle;
import sagwright.bench.LineStatistics;
import sagwright.sheet.Sheet;

/**
 * Runs on blanks. A run from a bench head is entered by {@link #start} before its first reading,
 * its bytes go to a {@link RunJournal} while they arrive, and {@link #close} makes it whole.
 */
public final class Runs {
  private final Database database;
  private final Actions actions;
  private final JournalFolder journals;
  private final Keeper keeper;

  Runs(Database database, Actions actions, JournalFolder journals, Keeper keeper) {
    this.database = database;
    this.actions = actions;
    this.journals = journals;
    this.keeper = keeper;
  }

  /** Enters a run and opens its journal: both are on disk when this returns. */
  public RunJournal start(RunStart start) throws WorkshopException {
    RunJournal[] opened = new RunJournal[1];
    try {
      return database.write(
          handle -> {
            long actionId = actions.begin(handle, "run on " + start.blank().tag(), false);
            long runId =
                RunRows.insert(
                    handle,
                    start,
                    new RunRows.RunRow(actionId, RunOrigin.BENCH, start.startedAt().toString()));
            // before the entry can be seen, so that nobody takes the run for one that was cut off
            opened[0] = journals.create(runId);
            return opened[0];
          });
    } catch (WorkshopException | RuntimeException e) {
      if (opened[0] != null) {
        opened[0].close();
        journals.delete(opened[0].runId());
      }
      throw e;
    }
  }

  /**
   * Closes a run: its bytes, its sheet and its answer are stored, then its journal goes.
   *
   * @return the run as it stands on the record
   */
  public Run close(RunJournal journal, RunClosing closing) throws WorkshopException {
    long runId = journal.runId();
    Run run;
    try (journal) {
      journal.stopWriting();
      byte[] wire = journals.packed(runId);
      run =
          database.write(
              handle -> {
                long actionId = actions.begin(handle, "closed run " + runId, false);
                RunRows.insertClosing(handle, runId, actionId, closing, wire);
                RunRows.insertEvaluation(handle, runId, closing.outcome(), keeper);
                return run(runId);
              });
    }
    journals.delete(runId);
    return run;
  }

  /** Adds a run that comes whole, typed in or as a sheet. */
  public Run add(Blank blank, Sheet sheet, RunOrigin origin, RunOutcome outcome)
      throws WorkshopException {
    return database.write(
        handle -> {
          long actionId = actions.begin(handle, "run on " + blank.tag(), false);
          return add(handle, blank, new WholeRun(sheet, origin, outcome), actionId);
        });
  }

  /** A run that comes whole. */
  record WholeRun(Sheet sheet, RunOrigin origin, RunOutcome outcome) {}

  Run add(Handle handle, Blank blank, WholeRun whole, long actionId) throws WorkshopException {
    Sheet sheet = whole.sheet();
    Instant now = keeper.clock().instant();
    RunStart start =
        new RunStart(
            blank,
            sheet.startedInstant().orElse(now),
            sheet.documentWithoutReadings(),
            null,
            null,
            null);
    String shown = sheet.startedAt() == null ? now.toString() : sheet.startedAt();
    long runId = RunRows.insert(handle, start, new RunRows.RunRow(actionId, whole.origin(), shown));
    RunClosing closing =
        new RunClosing(
            whole.origin().stored(), sheet.json(), LineStatistics.NONE, whole.outcome(), null);
    RunRows.insertClosing(handle, runId, actionId, closing, null);
    RunRows.insertEvaluation(handle, runId, whole.outcome(), keeper);
    return run(runId);
  }

  /** A closed run by its number. */
  public Run run(long runId) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(RunRows.SELECT + "where r.id = ?", runId)
                .map((row, context) -> RunRows.read(row))
                .findFirst()
                .orElseThrow(() -> new WorkshopException("there is no run " + runId)));
  }

  /** A blank's closed runs, oldest first. */
  public List<Run> of(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    RunRows.SELECT
                        + "where r.blank_id = :blank and r.id in"
                        + " (select id from run where blank_id = :blank"
                        + " union select run_id from run_move where to_blank_id = :blank)"
                        + " order by r.started_ms, r.id")
                .bind("blank", blank.id())
                .map((row, context) -> RunRows.read(row))
                .list());
  }

  /** A blank's runs that count, oldest first. */
  public List<Run> counting(Blank blank) throws WorkshopException {
    return of(blank).stream().filter(Run::counts).toList();
  }

  /** The blanks that a bench head tested since then, the last one first. */
  public List<Blank> blanksTestedSince(Instant since, int most) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select b.id, b.tag from run_now r join blank_now b on b.id = r.blank_id"
                        + " where r.started_ms >= ? and r.origin = ?"
                        + " group by b.id order by max(r.started_ms) desc limit ?",
                    since.toEpochMilli(),
                    RunOrigin.BENCH.stored(),
                    most)
                .map((row, context) -> new Blank(row.getLong("id"), row.getString("tag")))
                .list());
  }

  /** The newest of a blank's runs that count. */
  public Optional<Run> latestCounting(Blank blank) throws WorkshopException {
    List<Run> counting = counting(blank);
    return counting.isEmpty() ? Optional.empty() : Optional.of(counting.get(counting.size() - 1));
  }

  /** A run's whole sheet; of one that was moved with the shaft that it was moved to. */
  public String sheet(Run run) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select coalesce(s.document, c.document) from run_closing c"
                        + " left join run_move_now m on m.run_id = c.run_id"
                        + " left join run_move_sheet s on s.move_id = m.id where c.run_id = ?",
                    run.id())
                .mapTo(String.class)
                .one());
  }

  /**
   * The calibration that was in force when a run was recorded; empty for one that came another way.
   */
  public Optional<String> calibration(Run run) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select calibration from run where id = ? and calibration is not null",
                    run.id())
                .mapTo(String.class)
                .findFirst());
  }

  /** Every byte of a run as it came over the line; empty where there was none. */
  public byte[] wire(Run run) throws WorkshopException {
    byte[] packed =
        database.read(
            handle ->
                handle
                    .select("select wire from run_closing where run_id = ?", run.id())
                    .map((row, context) -> row.getBytes("wire"))
                    .first());
    if (packed == null) {
      return new byte[0];
    }
    try (GZIPInputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Sets a run aside: it stays on the record and counts no more. */
  public void setAside(Run run, String why) throws WorkshopException {
    verdict(run, why, "set aside run " + run.id() + ": " + why);
  }

  /** Lets a run count again that was set aside. */
  public void keep(Run run) throws WorkshopException {
    verdict(run, null, "kept run " + run.id() + " after all");
  }

  private void verdict(Run run, String setAsideWhy, String what) throws WorkshopException {
    database.write(
        handle -> {
          RunRows.insertVerdict(handle, run.id(), actions.begin(handle, what, true), setAsideWhy);
          return null;
        });
  }

  /**
   * A run on the shaft that it was really made on.
   *
   * @param document its whole sheet with that shaft
   * @param outcome what comes of it there
   */
  public record OnOtherShaft(String document, RunOutcome outcome) {}

  /**
   * Moves a run that lay under the wrong blank. Where it lay, on which shaft, and what came of it
   * there stays on the record, and counts again if the move is undone.
   */
  public void move(Run run, Blank to, OnOtherShaft there, String why) throws WorkshopException {
    database.write(
        handle -> {
          Blank from =
              handle
                  .select(
                      "select b.id, b.tag from run_now r join blank b on b.id = r.blank_id"
                          + " where r.id = ?",
                      run.id())
                  .map((row, context) -> new Blank(row.getLong("id"), row.getString("tag")))
                  .one();
          if (from.id() == to.id()) {
            throw new WorkshopException("run " + run.id() + " lies under " + to.tag() + " already");
          }
          String what =
              "moved run " + run.id() + " from " + from.tag() + " to " + to.tag() + ": " + why;
          handle.execute(
              "insert into run_move (action_id, run_id, from_blank_id, to_blank_id, why)"
                  + " values (?, ?, ?, ?, ?)",
              actions.begin(handle, what, true),
              run.id(),
              from.id(),
              to.id(),
              why);
          return handle.execute(
              "insert into run_move_sheet (move_id, document, program, answer, no_answer)"
                  + " values (last_insert_rowid(), ?, ?, ?, ?)",
              there.document(),
              keeper.program(),
              there.outcome().answer(),
              there.outcome().noAnswer());
        });
  }

  /** Adds a newer answer to a run, worked out again from its sheet. */
  public void evaluateAgain(Run run, RunOutcome outcome) throws WorkshopException {
    database.write(
        handle -> {
          RunRows.insertEvaluation(handle, run.id(), outcome, keeper);
          return null;
        });
  }
}
