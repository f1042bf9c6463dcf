package sagwright.workshop;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The tapers that the shop keeps under names of its own. Each change of them can be undone. */
public final class TaperTemplates {
  private static final RowMapper<TaperTemplate> TEMPLATE =
      (row, context) ->
          new TaperTemplate(row.getLong("id"), row.getString("name"), row.getString("document"));

  private final Database database;
  private final Actions actions;

  TaperTemplates(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /** All, by name. */
  public List<TaperTemplate> all() throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select * from taper_template_now order by name collate nocase, id")
                .map(TEMPLATE)
                .list());
  }

  /**
   * Keeps a taper.
   *
   * @param document its length and its knots, as an order's finish has them
   * @throws WorkshopException also where the name is taken, without regard to case
   */
  public void keep(String name, String document) throws WorkshopException {
    database.write(
        handle -> {
          requireFree(name);
          long actionId = actions.begin(handle, "kept the taper " + name, true);
          long id =
              handle
                  .createUpdate("insert into taper_template (action_id, document) values (?, ?)")
                  .bind(0, actionId)
                  .bind(1, document)
                  .executeAndReturnGeneratedKeys("id")
                  .mapTo(Long.class)
                  .one();
          return name(handle, id, name, actionId);
        });
  }

  /** Gives a template another name. */
  public void rename(TaperTemplate template, String name) throws WorkshopException {
    database.write(
        handle -> {
          if (!name.equalsIgnoreCase(template.name())) {
            requireFree(name);
          }
          String what = "renamed the taper " + template.name() + " to " + name;
          return name(handle, template.id(), name, actions.begin(handle, what, true));
        });
  }

  public void delete(TaperTemplate template) throws WorkshopException {
    database.write(
        handle -> {
          String what = "deleted the taper " + template.name();
          return name(handle, template.id(), null, actions.begin(handle, what, true));
        });
  }

  private static int name(Handle handle, long templateId, String name, long actionId) {
    return handle.execute(
        "insert into taper_template_name (action_id, template_id, name) values (?, ?, ?)",
        actionId,
        templateId,
        name);
  }

  private void requireFree(String name) throws WorkshopException {
    for (TaperTemplate template : all()) {
      if (template.name().equalsIgnoreCase(name)) {
        throw new WorkshopException("there is a taper " + template.name() + " already");
      }
    }
  }
}
