package sagwright.job;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import sagwright.check.CheckRod;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** A workshop of its own for tests of calibrations and check rods, with a clock that is set. */
final class CheckedShop implements AutoCloseable {
  static final SpeciesTable SPECIES = SpeciesTable.published();
  static final CheckRod ROD =
      new CheckRod(
          1200,
          new Estimate(12, 0.005),
          CheckRod.ASSUMED_STEEL_MODULUS_MPA,
          CheckRod.ASSUMED_STEEL_POISSON_RATIO);

  private Instant now = Instant.parse("2026-03-02T09:00:00Z");
  final InstantSource clock = () -> now;
  final Workshop workshop;
  final CalibrationInForce inForce;
  final KeepCalibration keep;
  final CheckRods rods;
  final CheckRodState rodState;
  final DueChecks due;

  CheckedShop(Path folder) throws WorkshopException {
    workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), new Keeper(clock, "test"));
    inForce = new CalibrationInForce(workshop, clock);
    keep = new KeepCalibration(workshop, inForce, clock, new GradeAgain(workshop, SPECIES));
    rods = new CheckRods(workshop, SPECIES);
    rodState = new CheckRodState(workshop, SPECIES, inForce, clock);
    due = new DueChecks(inForce, rodState, clock, false);
  }

  void wait(Duration time) {
    now = now.plus(time);
  }

  DueCheck due(DueCheck.Subject subject) {
    return due.now().stream().filter(d -> d.subject() == subject).findFirst().orElseThrow();
  }

  @Override
  public void close() throws WorkshopException {
    workshop.close();
  }
}
