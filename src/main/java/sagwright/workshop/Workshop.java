package sagwright.workshop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import sagwright.sheet.SheetReader;

/**
 * The records of one workshop, in one SQLite file. Any thread may ask; they take turns. Each call
 * of the rooms behind it is one transaction.
 */
public final class Workshop implements AutoCloseable {
  private final Database database;
  private final Actions actions;
  private final JournalFolder journals;
  private final Keeper keeper;

  private Workshop(Database database, Keeper keeper) {
    this.database = database;
    this.keeper = keeper;
    this.actions = new Actions(database, keeper.clock());
    this.journals = new JournalFolder(database.file());
  }

  /** Where the workshop lies unless another file is named. */
  public static Path usualFile() {
    return home().resolve("workshop.db");
  }

  /** Where practice runs go, never among real blanks. */
  public static Path practiceFile() {
    return home().resolve("practice.db");
  }

  /** Where the example workshop lies, apart from all others. */
  public static Path exampleFile() {
    return home().resolve("example.db");
  }

  private static Path home() {
    return Path.of(System.getProperty("user.home"), "Sagwright");
  }

  /** Opens a workshop that is there. */
  public static Workshop open(Path file, Keeper keeper) throws WorkshopException {
    if (!Files.exists(file)) {
      throw new WorkshopException("there is no workshop " + file);
    }
    if (file.toFile().length() == 0 && !Files.isDirectory(file)) {
      throw new WorkshopException(
          "the workshop " + file + " is an empty file: bring back a backup of it");
    }
    return open(file, keeper, false);
  }

  /** Opens a workshop; an empty one is made where there is none. */
  public static Workshop openOrCreate(Path file, Keeper keeper) throws WorkshopException {
    try {
      Path folder = file.toAbsolutePath().getParent();
      if (!Files.isDirectory(folder)) {
        Files.createDirectories(folder);
      }
    } catch (IOException e) {
      throw new WorkshopException("the folder of the workshop " + file + " cannot be made", e);
    }
    return open(file, keeper, true);
  }

  private static Workshop open(Path file, Keeper keeper, boolean mayCreate)
      throws WorkshopException {
    if (Files.isDirectory(file)) {
      throw new WorkshopException("the workshop " + file + " is a folder, not a file");
    }
    Database database = Database.open(file, mayCreate);
    try {
      Migrations.ofThisProgram().bringUpToDate(database);
    } catch (WorkshopException | RuntimeException e) {
      database.close();
      throw e;
    }
    return new Workshop(database, keeper);
  }

  public Path file() {
    return database.file();
  }

  public Blanks blanks() {
    return new Blanks(database, actions);
  }

  public Orders orders() {
    return new Orders(database, actions);
  }

  public Runs runs() {
    return new Runs(database, actions, journals, keeper);
  }

  public CutOffRuns cutOffRuns() {
    return new CutOffRuns(database, journals);
  }

  public Grades grades() {
    return new Grades(database, actions, keeper);
  }

  public Promises promises() {
    return new Promises(database, actions);
  }

  public TaperTemplates taperTemplates() {
    return new TaperTemplates(database, actions);
  }

  public Notes notes() {
    return new Notes(database, actions);
  }

  public Grains grains() {
    return new Grains(database, actions);
  }

  /** What the scales and the calipers have said of all blanks. */
  public WoodHistories woodHistories(SheetReader reader) {
    return new WoodHistories(database, reader);
  }

  /**
   * @param reader for what is there already, to be held against what comes
   */
  public Intake intake(SheetReader reader) {
    return new Intake(this, database, reader);
  }

  public Guesses guesses() {
    return new Guesses(database, actions);
  }

  public Calibrations calibrations() {
    return new Calibrations(database, actions);
  }

  public CheckReadings checkReadings() {
    return new CheckReadings(database, actions);
  }

  /** All blanks at a glance. */
  public Rack rack() {
    return new Rack(database);
  }

  /**
   * All records in short, to choose among thousands.
   *
   * @param reader for what was not packed
   */
  public ShortRecords shortRecords(SheetReader reader) {
    return new ShortRecords(database, reader);
  }

  public Settings settings() {
    return new Settings(database);
  }

  /** Whether it is the invented example. */
  public boolean isExample() throws WorkshopException {
    return settings().get(Settings.EXAMPLE).isPresent();
  }

  /** For what brings real wood in: the example takes none. */
  public void requireReal() throws WorkshopException {
    if (isExample()) {
      throw new WorkshopException(file() + " is the example workshop: no real wood belongs in it");
    }
  }

  public Actions actions() {
    return actions;
  }

  /** Something done to the records. */
  public interface Step {
    void take() throws WorkshopException;
  }

  /** Takes a step of many writes as one: all of it or nothing, and the disk is waited for once. */
  public void asOne(Step step) throws WorkshopException {
    database.write(
        handle -> {
          step.take();
          return null;
        });
  }

  /** Writes a whole copy and looks it through; a file that is there already is not touched. */
  public void backUpTo(Path copy) throws WorkshopException {
    Backup.write(database, copy);
  }

  /** Looks the whole file through; says so where it is damaged. */
  public void requireWhole() throws WorkshopException {
    Backup.requireWhole(database);
  }

  @Override
  public void close() throws WorkshopException {
    database.close();
  }
}
