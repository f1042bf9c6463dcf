package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JointChanceTest {
  private static final double NO_LIMIT = 60;

  private static double chance(double[][] rows, double... lowestAndHighest) {
    List<double[]> limits = new ArrayList<>();
    for (int i = 0; i < lowestAndHighest.length; i += 2) {
      limits.add(new double[] {lowestAndHighest[i], lowestAndHighest[i + 1]});
    }
    return JointChance.of(rows, limits);
  }

  private static double within(double lowest, double highest) {
    return Chance.standardBetween(lowest, highest);
  }

  @Test
  void errorsThatAreSharedWhollyLeaveWhatIsCommonToTheLimits() {
    double[][] rows = {{1, 0, 0}, {1, 0, 0}};
    assertEquals(within(-0.5, 1), chance(rows, -2, 1, -0.5, 3), 1e-12);
    double[][] opposite = {{1, 0}, {-1, 0}};
    assertEquals(within(-1, 0.5), chance(opposite, -1, 3, -0.5, 3), 1e-12);
    assertEquals(0, chance(rows, -2, -1, 1, 2), 1e-15);
  }

  @Test
  void errorsThatAreNotSharedMultiply() {
    double[][] rows = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    assertEquals(
        within(-1, 2) * within(0.3, 1.5) * within(-2, 0),
        chance(rows, -1, 2, 0.3, 1.5, -2, 0),
        1e-9);
  }

  /** P(X &gt; 0, Y &gt; 0) = 1/4 + asin ρ/2π (Sheppard 1899). */
  @ParameterizedTest
  @ValueSource(doubles = {-0.999, -0.5, 0, 0.3, 0.9, 0.999999})
  void aQuadrantHasSheppardsChance(double correlation) {
    double[][] rows = {{1, 0}, {correlation, Math.sqrt(1 - correlation * correlation)}};
    assertEquals(
        0.25 + Math.asin(correlation) / (2 * Math.PI),
        chance(rows, 0, NO_LIMIT, 0, NO_LIMIT),
        1e-9);
  }

  /** 1/8 + (asin ρ₁₂ + asin ρ₁₃ + asin ρ₂₃)/4π (David 1953). */
  @Test
  void anOctantHasDavidsChance() {
    double r12 = 0.8;
    double r13 = 0.5;
    double r23 = 0.6;
    double l32 = (r23 - r12 * r13) / 0.6;
    double[][] rows = {{1, 0, 0}, {r12, 0.6, 0}, {r13, l32, Math.sqrt(1 - r13 * r13 - l32 * l32)}};
    assertEquals(
        0.125 + (Math.asin(r12) + Math.asin(r13) + Math.asin(r23)) / (4 * Math.PI),
        chance(rows, 0, NO_LIMIT, 0, NO_LIMIT, 0, NO_LIMIT),
        1e-8);
  }

  /** n figures that share half their variance are all above their means with chance 1/(n + 1). */
  @Test
  void figuresThatShareHalfTheirVarianceHaveOneChanceInNPlusOne() {
    double h = Math.sqrt(0.5);
    double[][] three = {{h, h, 0, 0}, {h, 0, h, 0}, {h, 0, 0, h}};
    assertEquals(0.25, chance(three, 0, NO_LIMIT, 0, NO_LIMIT, 0, NO_LIMIT), 1e-8);
    double[][] four = {{h, h, 0, 0, 0}, {h, 0, h, 0, 0}, {h, 0, 0, h, 0}, {h, 0, 0, 0, h}};
    assertEquals(0.2, chance(four, 0, NO_LIMIT, 0, NO_LIMIT, 0, NO_LIMIT, 0, NO_LIMIT), 5e-7);
  }

  /** One direction matters a thousand times more than the next, as a forecast's modulus does. */
  @Test
  void nearlyCommonErrorsComeCloseToTheCommonChance() {
    double small = 1e-3;
    double large = Math.sqrt(1 - small * small);
    double[][] rows = {{large, small, 0}, {large, -small, 0}, {large, 0, small}};
    assertEquals(within(-1, 1), chance(rows, -1, 1, -1, 1, -1, 1), 2e-3);
  }

  @Test
  void drawsAtRandomAgree() {
    Random random = new Random(4711);
    double[][] rows = new double[4][3];
    double[] limits = {-1.5, 1, -0.5, 2.5, -2, 0.8, -1, 3};
    for (double[] row : rows) {
      double square = 0;
      for (int j = 0; j < row.length; j++) {
        row[j] = random.nextGaussian() + (j == 0 ? 2 : 0);
        square += row[j] * row[j];
      }
      for (int j = 0; j < row.length; j++) {
        row[j] /= Math.sqrt(square);
      }
    }
    int draws = 1_000_000;
    int inside = 0;
    for (int draw = 0; draw < draws; draw++) {
      double[] z = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
      boolean all = true;
      for (int i = 0; i < rows.length && all; i++) {
        double value = rows[i][0] * z[0] + rows[i][1] * z[1] + rows[i][2] * z[2];
        all = limits[2 * i] <= value && value <= limits[2 * i + 1];
      }
      inside += all ? 1 : 0;
    }
    double drawn = (double) inside / draws;
    double scatter = Math.sqrt(drawn * (1 - drawn) / draws);
    assertEquals(drawn, chance(rows, limits), 4 * scatter);
  }
}
