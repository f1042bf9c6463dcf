package sagwright.workshop;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import sagwright.sheet.Sheet;
import sagwright.wood.Grain;

/** Blanks, their caliper entries, stages and ends. */
public final class Blanks {
  private static final RowMapper<Blank> BLANK =
      (row, context) -> new Blank(row.getLong("id"), row.getString("tag"));
  private static final RowMapper<CaliperEntry> CALIPER_ENTRY =
      (row, context) ->
          new CaliperEntry(
              row.getLong("id"),
              Instant.parse(row.getString("at")),
              row.getString("document"),
              row.getString("why"));

  private final Database database;
  private final Actions actions;

  Blanks(Database database, Actions actions) {
    this.database = database;
    this.actions = actions;
  }

  /** By its tag, without regard to case. */
  public Optional<Blank> find(String tag) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select id, tag from blank_now where folded = ?", Folded.of(tag))
                .map(BLANK)
                .findFirst());
  }

  public Blank require(String tag) throws WorkshopException {
    return find(tag)
        .orElseThrow(() -> new WorkshopException("there is no blank " + tag + " in this workshop"));
  }

  /** All that were not withdrawn, by tag. */
  public List<Blank> all() throws WorkshopException {
    return database.read(
        handle -> handle.select("select id, tag from blank_now order by folded").map(BLANK).list());
  }

  /**
   * Enters a new blank with its first caliper entry.
   *
   * @param sheet with a tag; its set-up and run play no part
   * @throws WorkshopException also where the tag is taken, without regard to case
   */
  public Blank enter(Sheet sheet) throws WorkshopException {
    return enter(sheet, Grain.UNSEEN);
  }

  /** The same with how its grain looked; undone together. */
  public Blank enter(Sheet sheet, Grain grain) throws WorkshopException {
    return database.write(
        handle -> {
          long actionId = actions.begin(handle, "entered blank " + sheet.tag(), true);
          Blank blank = enter(handle, sheet, actionId);
          addGrain(handle, blank, grain, actionId);
          return blank;
        });
  }

  private static void addGrain(Handle handle, Blank blank, Grain grain, long actionId) {
    if (!grain.isUnseen()) {
      Grains.add(handle, blank, grain, actionId);
    }
  }

  Blank enter(Handle handle, Sheet sheet, long actionId) throws WorkshopException {
    Optional<Blank> taken = find(sheet.tag());
    if (taken.isPresent()) {
      throw new WorkshopException("there is a blank " + taken.get().tag() + " already");
    }
    long id =
        handle
            .createUpdate("insert into blank (action_id, tag, folded) values (?, ?, ?)")
            .bind(0, actionId)
            .bind(1, sheet.tag())
            .bind(2, Folded.of(sheet.tag()))
            .executeAndReturnGeneratedKeys("id")
            .mapTo(Long.class)
            .one();
    Blank blank = new Blank(id, sheet.tag());
    addCaliperEntry(handle, blank, new NewEntry(sheet, "entered"), actionId);
    return blank;
  }

  /**
   * Adds a blank's newest caliper entry; a stage that it names becomes the blank's.
   *
   * @param why in words: "turned to near size", "station 3 was misread"
   */
  public void addCaliperEntry(Blank blank, Sheet sheet, String why) throws WorkshopException {
    addCaliperEntry(blank, sheet, Grain.UNSEEN, why);
  }

  /** The same with how its grain looks now; undone together. */
  public void addCaliperEntry(Blank blank, Sheet sheet, Grain grain, String why)
      throws WorkshopException {
    database.write(
        handle -> {
          long actionId = actions.begin(handle, "measured " + blank.tag() + ": " + why, true);
          addCaliperEntry(handle, blank, new NewEntry(sheet, why), actionId);
          addGrain(handle, blank, grain, actionId);
          return null;
        });
  }

  /** What a caliper entry is made of. */
  record NewEntry(Sheet sheet, String why) {}

  void addCaliperEntry(Handle handle, Blank blank, NewEntry entry, long actionId)
      throws WorkshopException {
    long id =
        handle
            .createUpdate(
                "insert into caliper_entry (action_id, blank_id, document, why)"
                    + " values (?, ?, ?, ?)")
            .bind(0, actionId)
            .bind(1, blank.id())
            .bind(2, entry.sheet().shaftDocument())
            .bind(3, entry.why())
            .executeAndReturnGeneratedKeys("id")
            .mapTo(Long.class)
            .one();
    handle.execute(
        "insert into caliper_figures (caliper_entry_id, outline) values (?, ?)",
        id,
        ShortShaft.of(entry.sheet()).packed());
    String stage = entry.sheet().stage();
    if (stage != null && !stage.equals(state(blank).stage())) {
      addStage(handle, blank, stage, actionId);
    }
  }

  /** The newest caliper entry. */
  public CaliperEntry caliperNow(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select * from caliper_now where blank_id = ?", blank.id())
                .map(CALIPER_ENTRY)
                .one());
  }

  /** All caliper entries that were not undone, oldest first. */
  public List<CaliperEntry> caliperEntries(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select e.*, a.at from caliper_entry e join action a on a.id = e.action_id"
                        + " where e.blank_id = ? and a.undone_at is null order by e.id",
                    blank.id())
                .map(CALIPER_ENTRY)
                .list());
  }

  public BlankState state(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select s.stage, o.number, e.why from blank b"
                        + " left join stage_now s on s.blank_id = b.id"
                        + " left join promise_now p on p.blank_id = b.id"
                        + " left join cue_order o on o.id = p.order_id"
                        + " left join blank_end_now e on e.blank_id = b.id"
                        + " where b.id = ?",
                    blank.id())
                .map(
                    (row, context) ->
                        new BlankState(
                            row.getString("stage"), row.getString("number"), row.getString("why")))
                .one());
  }

  /** The stages that a blank has been through, oldest first. */
  public List<StageEntry> stages(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select(
                    "select a.at, e.stage from stage_entry e join action a on a.id = e.action_id"
                        + " where e.blank_id = ? and a.undone_at is null order by e.id",
                    blank.id())
                .map(
                    (row, context) ->
                        new StageEntry(Instant.parse(row.getString("at")), row.getString("stage")))
                .list());
  }

  private static void addStage(Handle handle, Blank blank, String stage, long actionId) {
    handle.execute(
        "insert into stage_entry (action_id, blank_id, stage) values (?, ?, ?)",
        actionId,
        blank.id(),
        stage);
  }

  /** Ends a blank that is no more: sold, broken, firewood. Its record stays. */
  public void end(Blank blank, String why) throws WorkshopException {
    database.write(
        handle -> {
          if (state(blank).endedWhy() != null) {
            throw new WorkshopException(blank.tag() + " was ended before");
          }
          long actionId = actions.begin(handle, "ended " + blank.tag() + ": " + why, true);
          return handle.execute(
              "insert into blank_end (action_id, blank_id, why) values (?, ?, ?)",
              actionId,
              blank.id(),
              why);
        });
  }

  /** When and why a blank was ended; empty for one that is still there. */
  public Optional<EndEntry> end(Blank blank) throws WorkshopException {
    return database.read(
        handle ->
            handle
                .select("select at, why from blank_end_now where blank_id = ?", blank.id())
                .map(
                    (row, context) ->
                        new EndEntry(Instant.parse(row.getString("at")), row.getString("why")))
                .findFirst());
  }
}
