package sagwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ControlChartTest {
  private static final ChartBaseline STEADY = new ChartBaseline(10, 0.02);

  /** NIST/SEMATECH e-Handbook, 6.3.2.4: λ 0.3, start 50, s 2.0539; limits 52.5884 and 47.4115. */
  @Test
  void meetsThePublishedMovingAverage() throws IOException {
    double[] x = ReferenceTable.column("nist-ewma.csv", "x");
    double[] printed = ReferenceTable.column("nist-ewma.csv", "ewma_printed");
    ControlChart chart = ControlChart.of(new ChartBaseline(50, 2.0539), x);
    for (int i = 0; i < x.length; i++) {
      assertEquals(printed[i], chart.average()[i], 0.00501, "EWMA " + (i + 1));
    }
    assertEquals(52.5884317381266, chart.averageLimits().upper(), 1e-12);
    assertEquals(47.4115682618734, chart.averageLimits().lower(), 1e-12);
    assertEquals(ChartVerdict.IN, chart.verdict());
    assertEquals(-1, chart.driftBegan());
  }

  /** The same, 6.3.2.2: individuals chart of the last ten, limits 55.8041 and 45.8159. */
  @Test
  void meetsThePublishedIndividualsChart() throws IOException {
    double[] x = ReferenceTable.column("nist-ewma.csv", "x");
    double[] lastTen = Arrays.copyOfRange(x, 10, 20);
    ChartBaseline baseline = ChartBaseline.of(lastTen, 0);
    assertEquals(50.81, baseline.centre(), 1e-12);
    assertEquals(1.8778, baseline.sigma() * 1.128, 5e-5);
    ControlChart chart = ControlChart.of(baseline, lastTen);
    assertEquals(55.8040898345154, chart.individualLimits().upper(), 1e-12);
    assertEquals(45.8159101654846, chart.individualLimits().lower(), 1e-12);
  }

  /** The same, 6.3.2.3: target 325, k 0.3175, h 4.1959; first signal at the 14th. */
  @Test
  void meetsThePublishedCumulativeSums() throws IOException {
    double[] x = ReferenceTable.column("nist-cusum.csv", "x");
    double[] upper = ReferenceTable.column("nist-cusum.csv", "upper_sum");
    double[] lower = ReferenceTable.column("nist-cusum.csv", "lower_sum");
    Cusum sums = Cusum.of(x, new Cusum.Rule(325, 0.3175, 4.1959));
    for (int i = 0; i < x.length; i++) {
      assertEquals(upper[i], sums.upper()[i], 1e-9, "upper " + (i + 1));
      assertEquals(lower[i], sums.lower()[i], 1e-9, "lower " + (i + 1));
    }
    assertEquals(14, sums.firstSignal() + 1);
    assertEquals(13, sums.climbBegan() + 1);
  }

  @Test
  void oneWildReadingIsOutOnceAndNoDrift() {
    ControlChart chart = ControlChart.of(STEADY, new double[] {10, 10.01, 9.99, 10.065});
    assertEquals(ChartVerdict.ONCE_ABOVE, chart.verdict());
    assertEquals(ChartVerdict.IN, chart.verdictAt(2));
    assertEquals(
        ChartVerdict.ONCE_BELOW, ControlChart.of(STEADY, new double[] {10, 9.939}).verdict());
  }

  /** Readings none of which is out by itself, yet all to one side. */
  @Test
  void aCreepIsFoundAndDated() {
    double[] readings = {10, 10.01, 9.99, 10, 9.97, 9.965, 9.97, 9.965, 9.97};
    ControlChart chart = ControlChart.of(STEADY, readings);
    assertTrue(Arrays.stream(readings).allMatch(chart.individualLimits()::holds));
    assertEquals(ChartVerdict.CREPT_DOWN, chart.verdict());
    assertEquals(4, chart.driftBegan());
    double[] mirrored = Arrays.stream(readings).map(x -> 20 - x).toArray();
    assertEquals(ChartVerdict.CREPT_UP, ControlChart.of(STEADY, mirrored).verdict());
    assertEquals(4, ControlChart.of(STEADY, mirrored).driftBegan());
  }

  @Test
  void sayNothingBeforeTheFirstReading() {
    assertEquals(ChartVerdict.NOTHING_YET, ControlChart.of(STEADY, new double[0]).verdict());
  }

  @Test
  void aBaselineWantsFiveReadingsAndAScatterThatItsReadingsCanHave() {
    assertThrows(
        IllegalArgumentException.class, () -> ChartBaseline.of(new double[] {1, 2, 3, 4}, 0));
    ChartBaseline lucky = ChartBaseline.of(new double[] {10, 10, 10, 10, 10}, 0.01);
    assertEquals(0.01, lucky.sigma());
    assertEquals(10, lucky.centre());
  }

  /** Of steady readings 0.27 % leave the single limits (normal distribution at three sigmas). */
  @Test
  void aSteadyBenchLeavesTheSingleLimitsThreeTimesInAThousand() {
    Random random = new Random(1979);
    ControlLimits limits = ControlChart.of(STEADY, new double[] {10}).individualLimits();
    int out = 0;
    for (int i = 0; i < 100_000; i++) {
      out += limits.holds(10 + 0.02 * random.nextGaussian()) ? 0 : 1;
    }
    assertEquals(270, out, 60);
  }

  /**
   * How many readings it takes to find a shift of one standard deviation: drawn at random, against
   * the average run length worked out by a Markov chain (Brook and Evans 1972).
   */
  @Test
  void findsAShiftOfOneSigmaAsSoonAsTheoryHasIt() {
    Random random = new Random(1979);
    int shifts = 4000;
    double sum = 0;
    for (int i = 0; i < shifts; i++) {
      double[] readings =
          random.doubles(200).map(x -> 10.02 + 0.02 * random.nextGaussian()).toArray();
      ControlChart chart = ControlChart.of(STEADY, readings);
      int found = 0;
      while (chart.averageLimits().holds(chart.average()[found])) {
        found++;
      }
      sum += found + 1;
    }
    double theory = averageRunLength(1);
    assertEquals(theory, sum / shifts, 0.5);
    assertTrue(theory > 10 && theory < 13, "run length " + theory);
  }

  private static double averageRunLength(double shiftSigmas) {
    int states = 201;
    double limit = 3 * Math.sqrt(ControlChart.WEIGHT / (2 - ControlChart.WEIGHT));
    double width = 2 * limit / states;
    NormalDistribution normal = new NormalDistribution(null, shiftSigmas, 1);
    RealMatrix stay = MatrixUtils.createRealIdentityMatrix(states);
    for (int from = 0; from < states; from++) {
      double kept = (1 - ControlChart.WEIGHT) * (-limit + (from + 0.5) * width);
      for (int to = 0; to < states; to++) {
        double low = (-limit + to * width - kept) / ControlChart.WEIGHT;
        double high = (-limit + (to + 1) * width - kept) / ControlChart.WEIGHT;
        double chance = normal.cumulativeProbability(high) - normal.cumulativeProbability(low);
        stay.addToEntry(from, to, -chance);
      }
    }
    RealVector lengths =
        new LUDecomposition(stay).getSolver().solve(new ArrayRealVector(states, 1));
    return lengths.getEntry(states / 2);
  }

  @ParameterizedTest
  @EnumSource(ChartVerdict.class)
  void saysInWordsHowItStandsAndWhatToLookAt(ChartVerdict verdict) {
    assertFalse(verdict.inWords().isBlank());
    assertFalse(verdict.lookAt().isBlank());
    assertEquals(verdict.isIn(), verdict.inWords().equals("in"));
    assertNotEquals(verdict.inWords(), verdict.lookAt());
  }
}
