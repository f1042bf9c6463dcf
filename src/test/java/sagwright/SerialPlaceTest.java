package sagwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.check.CheckRod;
import sagwright.job.BenchShop;
import sagwright.job.CalibrationInForce;
import sagwright.job.CheckRodState;
import sagwright.job.CheckRods;
import sagwright.job.GradeAgain;
import sagwright.job.KeepCalibration;
import sagwright.job.LaidBlank;
import sagwright.run.HandReadings;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Keeper;
import sagwright.workshop.Workshop;

class SerialPlaceTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final CheckRod ROD =
      new CheckRod(
          1200,
          new Estimate(12, 0.005),
          CheckRod.ASSUMED_STEEL_MODULUS_MPA,
          CheckRod.ASSUMED_STEEL_POISSON_RATIO);

  @TempDir Path folder;

  /** From an hour after the example's calibration on. */
  private final InstantSource clock =
      () -> Instant.parse("2026-03-02T09:00:00Z").plus(Duration.ofHours(1));

  @Test
  void theBenchKnowsAtOnceThatTheRodWasTested() throws Exception {
    Keeper keeper = new Keeper(clock, "test");
    try (Workshop workshop = Workshop.openOrCreate(folder.resolve("workshop.db"), keeper)) {
      CalibrationInForce inForce = new CalibrationInForce(workshop, clock);
      new KeepCalibration(workshop, inForce, clock, new GradeAgain(workshop, SPECIES))
          .bringIn(Path.of("docs", "examples", "calibration.json"));
      new CheckRods(workshop, SPECIES).enter("rod-1", ROD);
      CheckRodState rod = new CheckRodState(workshop, SPECIES, inForce, clock);
      SerialPlace place =
          new SerialPlace(SwitchedLine.remembered("", 115_200), inForce::complete, rod);
      BenchShop bench = new BenchShop(workshop, SPECIES, place, clock, Runnable::run);
      LaidBlank laid = bench.lay("rod-1", bench.usualSetUp());
      assertThat(place.provedInWords()).contains("not seen");

      double mmPerN =
          1 / ROD.stiffnessNPerMm(bench.usualSetUp()).value()
              + place.calibration().frameComplianceMmPerN();
      bench.keepHandRead(
          laid,
          new HandReadings(
              new double[] {0, 5, 10, 15}, new double[] {0, 5 * mmPerN, 10 * mmPerN, 15 * mmPerN}));
      bench.lay("rod-1", bench.usualSetUp());
      assertThat(place.provedInWords()).contains("within 0.1 % of what its steel says");
    }
  }
}
