package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * All blanks at a glance, read at once. Two plain queries, put together here: joined in SQL they
 * are at the planner's mercy (three minutes for 5,000 blanks were seen).
 */
public final class Rack {
  private static final String BLANKS =
      "select b.id, b.tag,"
          + " c.document ->> '$.shaft.species' as species,"
          + " c.document ->> '$.shaft.massG' as mass_g,"
          + " (select stage from stage_now s where s.blank_id = b.id) as stage,"
          + " (select o.number from promise_now p join cue_order o on o.id = p.order_id"
          + "   where p.blank_id = b.id) as promised_to,"
          + " (select why from blank_end_now e where e.blank_id = b.id) as ended_why"
          + " from blank_now b join caliper_now c on c.blank_id = b.id order by b.folded";

  private static final String RUNS_THAT_COUNT =
      "select blank_id, started_at,"
          + " answer ->> '$.shaftStiffnessNPerMm' as stiffness_n_mm,"
          + " answer ->> '$.modulusMPa' as modulus_mpa"
          + " from run_now where set_aside = 0 and answer is not null order by started_ms, id";

  private final Database database;

  Rack(Database database) {
    this.database = database;
  }

  /** Every blank that was not withdrawn, by tag. */
  public List<RackRow> rows() throws WorkshopException {
    return database.read(
        handle -> {
          Map<Long, LatestRun> latest = latestRuns(handle);
          return handle
              .select(BLANKS)
              .map((row, context) -> rowOf(row, latest.getOrDefault(row.getLong("id"), NONE)))
              .list();
        });
  }

  private record LatestRun(Double stiffnessNPerMm, Double modulusMPa, String startedAt) {}

  private static final LatestRun NONE = new LatestRun(null, null, null);

  private static Map<Long, LatestRun> latestRuns(Handle handle) {
    Map<Long, LatestRun> latest = new HashMap<>();
    handle
        .select(RUNS_THAT_COUNT)
        .map((row, context) -> Map.entry(row.getLong("blank_id"), latestRunOf(row)))
        .forEach(run -> latest.put(run.getKey(), run.getValue())); // the newest comes last
    return latest;
  }

  private static LatestRun latestRunOf(ResultSet row) throws SQLException {
    return new LatestRun(
        numberOf(row, "stiffness_n_mm"), numberOf(row, "modulus_mpa"), row.getString("started_at"));
  }

  private static RackRow rowOf(ResultSet row, LatestRun latest) throws SQLException {
    return new RackRow(
        new Blank(row.getLong("id"), row.getString("tag")),
        new BlankState(
            row.getString("stage"), row.getString("promised_to"), row.getString("ended_why")),
        row.getString("species"),
        numberOf(row, "mass_g"),
        latest.stiffnessNPerMm(),
        latest.modulusMPa(),
        latest.startedAt());
  }

  private static Double numberOf(ResultSet row, String column) throws SQLException {
    double number = row.getDouble(column);
    return row.wasNull() ? null : number;
  }
}
