package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The example files of {@code calibration/}; the figures were worked out apart, in Python with
 * NumPy, by the definitions of docs/calibration-terms.md.
 */
class CalibrationExamplesTest {
  private static final Path FOLDER = Path.of("calibration");

  @Test
  void theLoadExampleComesOutAsWorkedOutApart() throws Exception {
    List<CalibrationPoint> points =
        PointsReader.ofMasses(new LocalGravity(9.812))
            .read(Files.readString(FOLDER.resolve("load-points-example.csv")));
    LineCalibration line = LineCalibration.of(points);
    assertEquals(39, line.residuals().length);
    assertEquals(2.4978627737216487e-05, line.slope(), 1e-17);
    assertEquals(2.134045072932182e-09, line.slopeStdUncertainty(), 1e-18);
    assertEquals(0.00840253586621071, line.residualStd(), 1e-12);
    assertEquals(-0.00316113, line.residuals()[0], 5e-9);
    assertEquals(0.23520532316164577, line.terms().greatestErrorPercent(), 1e-9);
    assertEquals(0.35645459774635796, line.terms().repeatabilityPercent(), 1e-9);
    assertEquals(0.09259332527173271, line.terms().reversibilityPercent(), 1e-9);
    assertEquals(0.0127814434334774, line.terms().zeroReturnPercent(), 1e-9);
    assertEquals(5 * 9.812 * 0.99985, line.greatestPoint(), 1e-12);
    assertEquals(0.5, line.forceClass().number());
  }

  @Test
  void theGaugeExampleComesOutAsWorkedOutApart() throws Exception {
    LineCalibration line =
        LineCalibration.of(
            PointsReader.ofBlocks()
                .read(Files.readString(FOLDER.resolve("gauge-points-example.csv"))));
    assertEquals(26, line.residuals().length);
    assertEquals(0.00099963293339931, line.slope(), 1e-15);
    assertEquals(3.935309850041401e-08, line.slopeStdUncertainty(), 1e-17);
    assertEquals(0.0016111863522047729, line.residualStd(), 1e-12);
    assertEquals(0.12549894841313858, line.terms().greatestErrorPercent(), 1e-9);
    assertEquals(0.07997063467193755, line.terms().repeatabilityPercent(), 1e-9);
    assertEquals(0.07997063467193764, line.terms().reversibilityPercent(), 1e-9);
    assertEquals(0.007997063467193755, line.terms().zeroReturnPercent(), 1e-9);
    assertEquals(0.5, line.forceClass().number());
  }
}
