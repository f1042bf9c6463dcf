package sagwright.job;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import sagwright.beam.SetUp;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.HealthReport;
import sagwright.check.CheckRod;
import sagwright.check.FrameCompliance;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Action;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** All that proves the bench of one workshop. Slow things: for the work thread. */
public final class ChecksShop {
  private final Workshop workshop;
  private final SpeciesTable species;
  private final CalibrationInForce inForce;
  private final CheckRodState rod;
  private final CheckRods rods;
  private final DueChecks due;
  private final KeepCalibration keep;
  private final CalibrationDrafts drafts;
  private final BenchHealthFile healthFile;
  private final SetUp usual;
  private final BenchPlace place;

  /**
   * What the checks stand on.
   *
   * @param place the bench that is proved
   * @param usual the shop's usual set-up, on which the rod's marks are
   * @param program name and version
   */
  public record Ground(
      Workshop workshop,
      SpeciesTable species,
      BenchPlace place,
      SetUp usual,
      InstantSource clock,
      String program) {}

  /**
   * @param inForce that the bench works by
   * @param rod that the bench's foot quotes
   */
  public ChecksShop(Ground ground, CalibrationInForce inForce, CheckRodState rod) {
    this.workshop = ground.workshop();
    this.species = ground.species();
    this.usual = ground.usual();
    this.inForce = inForce;
    this.rod = rod;
    this.rods = new CheckRods(workshop, species);
    this.place = ground.place();
    this.due = new DueChecks(inForce, rod, ground.clock(), place.isPractice());
    this.keep =
        new KeepCalibration(workshop, inForce, ground.clock(), new GradeAgain(workshop, species));
    this.drafts = new CalibrationDrafts(workshop);
    this.healthFile = new BenchHealthFile(ground.program(), ground.clock());
  }

  public CalibrationInForce inForce() {
    return inForce;
  }

  /** The check rod as it was when the records were looked into last. */
  public RodStanding rod() {
    return rod.standing();
  }

  public List<DueCheck> due() {
    return due.now();
  }

  /** The bench whose calibration is worked at. */
  public BenchPlace place() {
    return place;
  }

  public CalibrationDrafts drafts() {
    return drafts;
  }

  public KeepCalibration keep() {
    return keep;
  }

  /** Whose hand is at work; empty where nobody has said so. */
  public String initials() throws WorkshopException {
    return workshop.settings().get(Settings.INITIALS).orElse("");
  }

  /** Looks into the records: something was kept, tested or undone. */
  public void readAgain() throws WorkshopException {
    inForce.readAgain();
    rod.readAgain();
  }

  /**
   * What the frame gives, from a run on a bar.
   *
   * @param bar the tag of a blank that has been tested, or a sheet's file
   * @param modulusMPa known, above 0
   */
  public FrameCompliance frame(String bar, Estimate modulusMPa)
      throws WorkshopException, PoorRunException {
    try {
      Sheet sheet = bar(bar).requireRun();
      if (sheet.shaft().splice() != null) {
        throw new BadDocumentException("shaft.splice", "a bar is of one material");
      }
      return FrameCompliance.of(sheet.bendTest(), modulusMPa, new Evaluator(species));
    } catch (BadDocumentException e) {
      throw new WorkshopException(bar + ": " + e.getMessage());
    }
  }

  private Sheet bar(String bar) throws WorkshopException, BadDocumentException {
    SheetReader reader = new SheetReader(species);
    Optional<Blank> blank = workshop.blanks().find(bar);
    if (blank.isEmpty()) {
      try {
        return reader.readFile(Path.of(bar));
      } catch (InvalidPathException e) {
        throw new WorkshopException("bar: neither a tag nor a file is called " + bar);
      }
    }
    Optional<Run> latest = workshop.runs().latestCounting(blank.get());
    if (latest.isEmpty()) {
      throw new WorkshopException(bar + " has no run that counts: test it on the bench first");
    }
    return reader.read(workshop.runs().sheet(latest.get()));
  }

  /** Enters a rod, or what it was measured to be anew. */
  public void enterRod(String tag, CheckRod checkRod) throws WorkshopException {
    rods.enter(tag, checkRod);
    rod.readAgain();
  }

  /** A reading of the rod, on the usual set-up, that was noted elsewhere. */
  public void typeRod(double shownNPerMm) throws WorkshopException {
    rods.keepTyped(rod.standing().rod(), usual, shownNPerMm);
    rod.readAgain();
  }

  /** Writes what is known of the bench beside the workshop's file. */
  public Path writeHealthFile(BenchSnapshot snapshot, HealthReport health)
      throws WorkshopException {
    return healthFile.write(
        workshop.file().toAbsolutePath().getParent(),
        new BenchHealthFile.Bench(
            snapshot, health, inForce.complete() == null, inForce.standing(), rod.standing()));
  }

  /** What {@link #undo} would undo; empty where the newest action is none of the checks'. */
  public Optional<String> undoable() throws WorkshopException {
    return workshop.actions().lastUndoable().map(Action::what).filter(this::isOfChecks);
  }

  private boolean isOfChecks(String what) {
    RodStanding now = rod.standing();
    boolean ofRod =
        now.hasRod()
            && (what.equals("entered blank " + now.rod().blank().tag())
                || what.startsWith("measured " + now.rod().blank().tag() + ":"));
    return ofRod || what.equals("calibrated the bench") || what.startsWith("checked the bench on ");
  }

  /**
   * Undoes the newest action of the checks.
   *
   * @return what was undone
   */
  public String undo() throws WorkshopException {
    if (undoable().isEmpty()) {
      throw new WorkshopException("there is nothing here to undo");
    }
    String what = new TakeBack(workshop, species).last();
    readAgain();
    return what;
  }
}
