package sagwright.workshop;

import java.util.Optional;

/** What a workshop has set for itself, by name. */
public final class Settings {
  /** Whose hand is at work; they sign what is done. */
  public static final String INITIALS = "initials";

  /** The least chance at which a grade says "meets", 0 to 1. */
  public static final String SURENESS = "sureness";

  /** How many runs a series on the bench has, as a whole number. */
  public static final String RUNS_OF_SERIES = "runsOfSeries";

  /** The words of the shop's scale from soft to stiff, a comma between them. */
  public static final String SCALE_WORDS = "words of the scale";

  /** What ranks blanks: four numbers, the weights of stiffness, mass, balance and spare. */
  public static final String RANKING_WEIGHTS = "ranking weights";

  /** How a butt is bored for lead: three numbers in mm, left closed, depth, diameter. */
  public static final String BUTT_BORE = "butt bore";

  /** Whether a guess by hand is wanted before a test: "yes" or not. */
  public static final String GUESS_FIRST = "guess first";

  /** Stands in the invented example workshop alone: the day that it was made for. */
  public static final String EXAMPLE = "example workshop";

  private final Database database;

  Settings(Database database) {
    this.database = database;
  }

  public Optional<String> get(String name) throws WorkshopException {
    return database.readPlainly(
        connection ->
            PlainRows.first(
                connection,
                "select value from setting where name = ?",
                name,
                row -> row.getString(1)));
  }

  public void set(String name, String value) throws WorkshopException {
    database.write(
        handle ->
            handle.execute(
                "insert into setting (name, value) values (?, ?)"
                    + " on conflict (name) do update set value = excluded.value",
                name,
                value));
  }

  /** As if it had never been set. */
  public void unset(String name) throws WorkshopException {
    database.write(handle -> handle.execute("delete from setting where name = ?", name));
  }
}
