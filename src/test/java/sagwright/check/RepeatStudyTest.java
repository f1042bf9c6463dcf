package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class RepeatStudyTest {
  /** The gauge study of the automotive manual: sums of squares, F and p as printed. */
  @Test
  void meetsThePublishedAnalysisOfVariance() throws IOException {
    RepeatStudy study = RepeatStudy.of(published());
    assertEquals(88.3619, study.shafts().sumOfSquares(), 5e-5);
    assertEquals(3.1673, study.hands().sumOfSquares(), 5e-5);
    assertEquals(0.3590, study.both().sumOfSquares(), 5e-5);
    assertEquals(2.7589, study.repeats().sumOfSquares(), 5e-5);
    assertEquals(0.434, study.interactionF(), 5e-4);
    assertEquals(0.974106404329, study.interactionChance(), 1e-9);
    assertEquals(18, study.both().degreesOfFreedom());
    assertEquals(60, study.repeats().degreesOfFreedom());
  }

  /** The same, with the interaction counted among the repeats: variances and their shares. */
  @Test
  void meetsThePublishedVariances() throws IOException {
    RepeatStudy study = RepeatStudy.of(published());
    assertTrue(study.isPooled());
    assertEquals(0.0399732763534, study.repeatVariance(), 1e-12);
    assertEquals(0.0514552611586, study.handVariance(), 1e-12);
    assertEquals(1.08644660441, study.shaftVariance(), 1e-11);
    assertEquals(0.0914285375119, study.benchVariance(), 1e-12);
    assertEquals(27.86, study.percentOfStudy(), 5e-3);
    assertEquals(4.86, study.categories(), 5e-3);
    assertEquals(0.199933, Math.sqrt(study.repeatVariance()), 5e-7);
    assertEquals(0.226838, Math.sqrt(study.handVariance()), 1e-6);
    assertEquals(1.042327, Math.sqrt(study.shaftVariance()), 5e-7);
  }

  /** Readings made with known variances give them back; a hand's own way with a shaft is seen. */
  @Test
  void findsTheVariancesThatReadingsWereMadeWith() {
    Random random = new Random(42);
    double[][][] readings = new double[60][12][4];
    double[] hand = random.doubles(12).map(x -> 0.3 * random.nextGaussian()).toArray();
    for (double[][] shaft : readings) {
      double own = 2 * random.nextGaussian();
      for (int j = 0; j < shaft.length; j++) {
        double both = 0.2 * random.nextGaussian();
        for (int k = 0; k < shaft[j].length; k++) {
          shaft[j][k] = 10 + own + hand[j] + both + 0.1 * random.nextGaussian();
        }
      }
    }
    RepeatStudy study = RepeatStudy.of(readings);
    assertFalse(study.isPooled());
    assertEquals(0.01, study.repeatVariance(), 0.001);
    assertEquals(0.09 + 0.04, study.handVariance(), 0.09);
    assertEquals(4, study.shaftVariance(), 2);
  }

  @Test
  void refusesAStudyThatIsNotWhole() {
    assertThrows(IllegalArgumentException.class, () -> RepeatStudy.of(new double[1][2][2]));
    assertThrows(IllegalArgumentException.class, () -> RepeatStudy.of(new double[2][2][1]));
    double[][][] gap = {{{1, 2}, {3, 4}}, {{1, 2}, {3}}};
    assertThrows(IllegalArgumentException.class, () -> RepeatStudy.of(gap));
  }

  private static double[][][] published() throws IOException {
    List<CSVRecord> rows = ReferenceTable.rows("gauge-rr.csv");
    double[][][] readings = new double[rows.size()][3][3];
    for (int part = 0; part < readings.length; part++) {
      for (int cell = 0; cell < 9; cell++) {
        readings[part][cell / 3][cell % 3] = Double.parseDouble(rows.get(part).get(1 + cell));
      }
    }
    return readings;
  }
}
