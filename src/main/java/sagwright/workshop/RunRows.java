package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import sagwright.bench.LineStatistics;

/** Runs as rows: what {@link Runs} and {@link CutOffRuns} both write and read. */
final class RunRows {
  static final String SELECT =
      "select r.*, b.tag as moved_from_tag from run_now r"
          + " left join blank b on b.id = r.moved_from_blank_id ";

  private RunRows() {}

  static long insert(Handle handle, RunStart start, RunRow row) {
    return handle
        .createUpdate(
            "insert into run (action_id, blank_id, started_at, started_ms, origin, document,"
                + " calibration, target_n, safe_n, order_id) values (:action, :blank, :startedAt,"
                + " :startedMs, :origin, :document, :calibration, :targetN, :safeN, :order)")
        .bind("action", row.actionId())
        .bind("blank", start.blank().id())
        .bind("startedAt", row.startedAt())
        .bind("startedMs", start.startedAt().toEpochMilli())
        .bind("origin", row.origin().stored())
        .bind("document", start.document())
        .bind("calibration", start.calibration())
        .bind("targetN", start.limits() == null ? null : start.limits().targetN())
        .bind("safeN", start.limits() == null ? null : start.limits().safeN())
        .bind("order", start.order() == null ? null : start.order().id())
        .executeAndReturnGeneratedKeys("id")
        .mapTo(Long.class)
        .one();
  }

  /**
   * What the start of a run does not say.
   *
   * @param startedAt as it is to be shown
   */
  record RunRow(long actionId, RunOrigin origin, String startedAt) {}

  /**
   * @param wire every byte as it came, packed; null where there was no line
   */
  static void insertClosing(
      Handle handle, long runId, long actionId, RunClosing closing, byte[] wire) {
    LineStatistics line = closing.line();
    handle
        .createUpdate(
            "insert into run_closing (run_id, action_id, ending, document, wire, readings,"
                + " refused, gaps, missing) values (:run, :action, :ending, :document, :wire,"
                + " :readings, :refused, :gaps, :missing)")
        .bind("run", runId)
        .bind("action", actionId)
        .bind("ending", closing.ending())
        .bind("document", closing.document())
        .bind("wire", wire)
        .bind("readings", line.readings())
        .bind("refused", line.refused())
        .bind("gaps", line.gaps())
        .bind("missing", line.missing())
        .execute();
    if (closing.setAsideWhy() != null) {
      insertVerdict(handle, runId, actionId, closing.setAsideWhy());
    }
  }

  static void insertVerdict(Handle handle, long runId, long actionId, String setAsideWhy) {
    handle.execute(
        "insert into run_verdict (action_id, run_id, set_aside, why) values (?, ?, ?, ?)",
        actionId,
        runId,
        setAsideWhy == null ? 0 : 1,
        setAsideWhy == null ? "taken back" : setAsideWhy);
  }

  static void insertEvaluation(Handle handle, long runId, RunOutcome outcome, Keeper keeper) {
    long id =
        handle
            .createUpdate(
                "insert into evaluation (run_id, at, program, answer, no_answer)"
                    + " values (:run, :at, :program, :answer, :noAnswer)")
            .bind("run", runId)
            .bind("at", keeper.clock().instant().toString())
            .bind("program", keeper.program())
            .bind("answer", outcome.answer())
            .bind("noAnswer", outcome.noAnswer())
            .executeAndReturnGeneratedKeys("id")
            .mapTo(Long.class)
            .one();
    if (outcome.answer() != null) {
      String document =
          handle.select("select document from run where id = ?", runId).mapTo(String.class).one();
      handle.execute(
          "insert into evaluation_figures (evaluation_id, figures) values (?, ?)",
          id,
          ShortAnswer.of(outcome.answer(), document).packed());
    }
  }

  static Run read(ResultSet row) throws SQLException {
    String movedWhy = row.getString("moved_why");
    return new Run(
        row.getLong("id"),
        row.getString("started_at"),
        RunOrigin.of(row.getString("origin")),
        row.getString("ending"),
        new LineStatistics(
            row.getLong("readings"),
            row.getLong("refused"),
            row.getLong("gaps"),
            row.getLong("missing")),
        new RunOutcome(row.getString("answer"), row.getString("no_answer")),
        row.getBoolean("set_aside") ? row.getString("set_aside_why") : null,
        movedWhy == null ? null : new Run.Moved(row.getString("moved_from_tag"), movedWhy));
  }
}
