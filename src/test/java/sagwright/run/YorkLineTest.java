package sagwright.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published straight lines; the data and their sources stand in src/test/resources/reference. */
class YorkLineTest {
  private final double[][] pearson = columns("pearson-york.csv");
  private final double[][] norris = columns("nist-norris.csv");

  @Test
  void pearsonsPointsWithYorksWeightsGiveThePublishedLine() {
    YorkLine line = YorkLine.through(pearson[0], pearson[1], pearson[2], pearson[3]);
    // York 1966/2004; Reed 5.47991022723, Lybanon 5.47991025, Neri 5.47991022 agree to their digits
    close(5.47991022403287, line.intercept(), 1e-11);
    close(-0.480533407446202, line.slope(), 1e-11);
    // York et al. 2004, standard errors at the adjusted points
    close(0.294970735493109, line.interceptStdError(), 1e-9);
    close(0.0579850090007744, line.slopeStdError(), 1e-9);
    close(-0.0164725446581158, line.covariance(), 1e-9);
    close(11.8663531940614, line.weightedSquares(), 1e-11);
    // the same scaled by √(S/8)
    close(1.2179056405394, line.scatterFactor(), 1e-11);
    close(0.0706202695287709, line.slopeUncertainty(), 1e-9);
  }

  @Test
  void yWeightsAloneGiveTheWeightedOrdinaryLine() {
    double[] none = filled(pearson[0].length, 1e20);
    YorkLine line = YorkLine.through(pearson[0], pearson[1], none, pearson[3]);
    close(6.10010931666576, line.intercept(), 1e-9);
    close(-0.610812956583934, line.slope(), 1e-9);
    close(0.204662685810594, line.interceptStdError(), 1e-9);
    close(0.0300874488371911, line.slopeStdError(), 1e-9);
  }

  @Test
  void equalErrorsGivePearsonsOrthogonalLine() {
    // Pearson 1901 printed 5.7857 − 0.546 x
    YorkLine line = YorkLine.ofEqualErrors(sums(pearson[0], pearson[1]), 1, 1);
    close(5.784043774530, line.intercept(), 1e-11);
    close(-0.545561197521, line.slope(), 1e-11);
  }

  @Test
  void closedFormAndIterationAreOneLine() {
    double sigmaX = 0.4;
    double sigmaY = 0.7;
    int n = pearson[0].length;
    YorkLine closed = YorkLine.ofEqualErrors(sums(pearson[0], pearson[1]), sigmaX, sigmaY);
    YorkLine iterated =
        YorkLine.through(
            pearson[0],
            pearson[1],
            filled(n, 1 / (sigmaX * sigmaX)),
            filled(n, 1 / (sigmaY * sigmaY)));
    close(iterated.intercept(), closed.intercept(), 1e-12);
    close(iterated.slope(), closed.slope(), 1e-12);
    close(iterated.interceptStdError(), closed.interceptStdError(), 1e-12);
    close(iterated.slopeStdError(), closed.slopeStdError(), 1e-12);
    close(iterated.covariance(), closed.covariance(), 1e-12);
    close(iterated.weightedSquares(), closed.weightedSquares(), 1e-12);
  }

  @Test
  void norrisGivesTheCertifiedLine() {
    // NIST StRD Norris; errors in y alone, and unstated ones, are the ordinary line
    for (double stated : new double[] {0, 0.001}) {
      YorkLine line = YorkLine.ofEqualErrors(sums(norris[1], norris[0]), 0, stated);
      close(-0.262323073774029, line.intercept(), 1e-10);
      close(1.00211681802045, line.slope(), 1e-13);
      double scale = stated == 0 ? 1 : line.scatterFactor();
      close(0.232818234301152, line.interceptStdError() * scale, 1e-10);
      close(0.429796848199937e-3, line.slopeUncertainty(), 1e-10);
      double residualStd =
          (stated == 0 ? line.slopeStdError() / 0.429796848199937e-3 : stated * scale);
      close(stated == 0 ? 1 : 0.884796396144373, residualStd, 1e-10);
    }
  }

  @Test
  void natrellasWorksheetGivesThePrintedVariances() {
    double[][] points = columns("natrella-5-4-1.csv");
    YorkLine line = YorkLine.ofEqualErrors(sums(points[0], points[1]), 0, 0);
    close(-0.449854824140725, line.slope(), 1e-12);
    close(4654.98459590081, line.intercept(), 1e-12);
    close(2.56490455138584e-5, line.slopeStdError() * line.slopeStdError(), 1e-10);
    close(19.8794530320504, line.interceptStdError() * line.interceptStdError(), 1e-10);
    double at1200 = varianceAt(line, 1200);
    close(10.530375942249, at1200, 1e-9);
  }

  @Test
  void guidesThermometerGivesThePrintedLineAndCorrelation() {
    // JCGM 100:2008, H.3, b = y1 + y2 (t − 20)
    double[][] points = columns("gum-h3.csv");
    double[] fromTwenty = Arrays.stream(points[0]).map(t -> t - 20).toArray();
    YorkLine line = YorkLine.ofEqualErrors(sums(fromTwenty, points[1]), 0, 0);
    close(-0.17120379013135, line.intercept(), 1e-11);
    close(0.00218269773988729, line.slope(), 1e-11);
    close(0.00287759783515995, line.interceptStdError(), 1e-10);
    close(0.000667938773227832, line.slopeStdError(), 1e-10);
    double correlation = line.covariance() / line.interceptStdError() / line.slopeStdError();
    close(-0.930429603093446, correlation, 1e-10);
    close(0.00413859575285495, Math.sqrt(varianceAt(line, 10)), 1e-9);
  }

  @Test
  void mirroredPointsGiveTheCertifiedLineThroughTheOrigin() {
    // NIST StRD NoInt1: with each point and its mirror image the ordinary line has no intercept,
    // twice the squares and twice the degrees of freedom
    double[][] points = columns("nist-noint1.csv");
    int n = points[0].length;
    double[] x = new double[2 * n];
    double[] y = new double[2 * n];
    for (int i = 0; i < n; i++) {
      y[i] = points[0][i];
      x[i] = points[1][i];
      y[n + i] = -y[i];
      x[n + i] = -x[i];
    }
    YorkLine line = YorkLine.ofEqualErrors(sums(x, y), 0, 0);
    close(2.07438016528926, line.slope(), 1e-13);
    assertEquals(0, line.intercept(), 1e-12);
    close(0.0165289256198347, line.slopeStdError() * Math.sqrt(2), 1e-11);
  }

  @Test
  void errorsInXAloneGiveTheLineOfXOnY() {
    LineSums sums = sums(pearson[0], pearson[1]);
    close(sums.syy() / sums.sxy(), YorkLine.ofEqualErrors(sums, 0.3, 0).slope(), 1e-13);
    close(sums.sxy() / sums.sxx(), YorkLine.ofEqualErrors(sums, 0, 0.3).slope(), 1e-13);
  }

  @Test
  void swappingTheAxesTurnsTheLineOver() {
    YorkLine line = YorkLine.through(pearson[0], pearson[1], pearson[2], pearson[3]);
    YorkLine turned = YorkLine.through(pearson[1], pearson[0], pearson[3], pearson[2]);
    close(1 / line.slope(), turned.slope(), 1e-11);
    close(line.weightedSquares(), turned.weightedSquares(), 1e-11);
    close(line.slopeStdError() / (line.slope() * line.slope()), turned.slopeStdError(), 1e-9);
  }

  private static double varianceAt(YorkLine line, double x) {
    return line.interceptStdError() * line.interceptStdError()
        + 2 * x * line.covariance()
        + x * x * line.slopeStdError() * line.slopeStdError();
  }

  private static LineSums sums(double[] x, double[] y) {
    return LineSums.over(x, y);
  }

  private static double[] filled(int n, double value) {
    double[] values = new double[n];
    Arrays.fill(values, value);
    return values;
  }

  private static void close(double expected, double found, double relative) {
    assertEquals(expected, found, Math.abs(expected) * relative);
    assertTrue(Double.isFinite(found));
  }

  private static double[][] columns(String file) {
    List<String> rows;
    try (InputStream in = YorkLineTest.class.getResourceAsStream("/reference/data/" + file)) {
      rows =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(l -> !l.startsWith("#") && !l.isBlank())
              .skip(1)
              .toList();
    } catch (IOException e) {
      throw new IllegalStateException(file, e);
    }
    int width = rows.get(0).split(",").length;
    double[][] columns = new double[width][rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      String[] cells = rows.get(i).split(",");
      for (int j = 0; j < width; j++) {
        columns[j][i] = Double.parseDouble(cells[j].trim());
      }
    }
    return columns;
  }
}
