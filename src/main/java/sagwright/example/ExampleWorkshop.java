package sagwright.example;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.GaugeCalibration;
import sagwright.bench.LoadCalibration;
import sagwright.grade.WordScale;
import sagwright.job.CalibrationInForce;
import sagwright.job.GradeBlank;
import sagwright.job.KeepOrder;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Writes the example workshop into a file of its own, and tells it from real ones. */
public final class ExampleWorkshop {
  /** Initials of the two invented people who work there. */
  public static final String MAKER = "EW";

  public static final String APPRENTICE = "TH";

  /** What the instruments truly are; a calibration comes near them. */
  public static final Calibration TRUE_INSTRUMENTS =
      new Calibration(
          Instant.EPOCH,
          1,
          null,
          new LoadCalibration(2.4987e-5, 0, 0, 45),
          new GaugeCalibration(0.00100021, 0, 0, 25, 0),
          0.00206,
          0);

  static final int TESTING_EARLY_SINCE_DAYS_AGO = 600;
  static final int GUESSING_SINCE_DAYS_AGO = 310;

  private static final Duration LONGEST_MAKING = Duration.ofHours(1);
  private static final String BEING_MADE = "example-being-made-";

  private final SpeciesTable species;
  private final String program;

  /** How far the making is; told on the thread that makes it. */
  public interface Progress {
    void at(int done, int of);
  }

  /**
   * @param program that signs its answers
   */
  public ExampleWorkshop(SpeciesTable species, String program) {
    this.species = species;
    this.program = program;
  }

  /**
   * Makes the file; it is there whole, or not at all.
   *
   * @param today the day that all days of the example are counted back from
   * @throws WorkshopException also where the file is there already
   */
  public void make(Path file, LocalDate today, Progress progress) throws WorkshopException {
    Path folder = file.toAbsolutePath().getParent();
    Path place = null;
    try {
      Files.createDirectories(folder);
      sweep(folder);
      place = Files.createTempDirectory(folder, BEING_MADE);
      Path part = place.resolve(file.getFileName());
      write(part, today, progress);
      if (Files.exists(file)) {
        throw new WorkshopException(file + " is there already");
      }
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new WorkshopException("the example workshop cannot be made in " + folder);
    } finally {
      takeAway(place);
    }
  }

  private void write(Path part, LocalDate today, Progress progress) throws WorkshopException {
    ExampleClock clock = new ExampleClock(Instant.EPOCH);
    try (Workshop workshop = Workshop.openOrCreate(part, new Keeper(clock, program))) {
      SetUp usual = WordScale.AT_FIRST.usual();
      CalibrationInForce inForce = new CalibrationInForce(workshop, clock);
      ExampleBench bench = new ExampleBench(workshop, species, clock, inForce);
      ExampleRack rack = new ExampleRack(species);
      Diary diary = new Diary(today);
      ExampleOrders orders = new ExampleOrders(rack, usual, diary::day);
      KeepOrder keepOrder = new KeepOrder(workshop, species);
      for (ExampleOrder order : orders.all()) {
        diary.on(order.takenDaysAgo(), 0.2, MAKER, () -> keepOrder.take(order.order()));
      }
      new ExampleChecks(workshop, species, inForce, clock, bench, usual).write(diary);
      BlankStory.Tools tools =
          new BlankStory.Tools(
              workshop,
              species,
              new SheetReader(species),
              bench,
              new ExampleGuesses(workshop),
              new GradeBlank(workshop, species),
              usual);
      Map<String, BlankStory> stories = new HashMap<>();
      for (ExampleBlank blank : rack.blanks()) {
        BlankStory story = new BlankStory(tools, blank, orders.of(blank));
        story.tell(diary);
        stories.put(blank.tag(), story);
      }
      new ExampleOddments(tools, rack, stories).tell(diary);
      workshop.asOne(
          () -> {
            diary.write(workshop, clock, progress);
            workshop.settings().set(Settings.EXAMPLE, today.toString());
          });
      workshop.requireWhole();
    }
  }

  /** Takes away what a power cut left half made; what another program makes just now is younger. */
  private static void sweep(Path folder) throws IOException {
    Instant old = Instant.now().minus(LONGEST_MAKING);
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, BEING_MADE + "*")) {
      for (Path place : left) {
        if (Files.getLastModifiedTime(place).toInstant().isBefore(old)) {
          takeAway(place);
        }
      }
    }
  }

  private static void takeAway(Path place) {
    if (place == null) {
      return;
    }
    try (Stream<Path> inside = Files.walk(place)) {
      for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    } catch (IOException e) {
      System.getLogger(ExampleWorkshop.class.getName())
          .log(System.Logger.Level.WARNING, "left behind: " + place, e);
    }
  }
}
