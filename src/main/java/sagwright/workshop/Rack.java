package sagwright.workshop;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;

/** All blanks at a glance, read at once. */
public final class Rack {
  private static final String ALL =
      "select b.id, b.tag, s.stage, o.number, e.why,"
          + " c.document ->> '$.shaft.species' as species,"
          + " c.document ->> '$.shaft.massG' as mass_g,"
          + " r.answer ->> '$.shaftStiffnessNPerMm' as stiffness_n_mm,"
          + " r.answer ->> '$.modulusMPa' as modulus_mpa, r.started_at"
          + " from blank_now b"
          + " join caliper_now c on c.blank_id = b.id"
          + " left join stage_now s on s.blank_id = b.id"
          + " left join promise_now p on p.blank_id = b.id"
          + " left join cue_order o on o.id = p.order_id"
          + " left join blank_end_now e on e.blank_id = b.id"
          + " left join (select blank_id, answer, started_at,"
          + "   row_number() over (partition by blank_id order by started_ms desc, id desc) as n"
          + "   from run_now where set_aside = 0 and answer is not null) r"
          + "   on r.blank_id = b.id and r.n = 1"
          + " order by b.folded";

  private final Database database;

  Rack(Database database) {
    this.database = database;
  }

  /** Every blank that was not withdrawn, by tag. */
  public List<RackRow> rows() throws WorkshopException {
    return database.read(handle -> handle.select(ALL).map((row, context) -> rowOf(row)).list());
  }

  private static RackRow rowOf(ResultSet row) throws SQLException {
    return new RackRow(
        new Blank(row.getLong("id"), row.getString("tag")),
        new BlankState(row.getString("stage"), row.getString("number"), row.getString("why")),
        row.getString("species"),
        numberOf(row, "mass_g"),
        numberOf(row, "stiffness_n_mm"),
        numberOf(row, "modulus_mpa"),
        row.getString("started_at"));
  }

  private static Double numberOf(ResultSet row, String column) throws SQLException {
    double number = row.getDouble(column);
    return row.wasNull() ? null : number;
  }
}
