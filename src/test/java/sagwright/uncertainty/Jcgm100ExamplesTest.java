package sagwright.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/**
 * The worked examples of JCGM 100:2008, Annex H, to the last printed digit; inputs and printed
 * results in src/test/resources/reference, formulas.md section 6 and data/gum-h*.csv. Where the
 * Guide's own rounding shows, the figure that the data give stands beside the printed one.
 */
class Jcgm100ExamplesTest {
  private static double[][] rows(String file) throws IOException {
    List<double[]> rows = new ArrayList<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/reference/data", file))) {
      if (!line.isEmpty() && (Character.isDigit(line.charAt(0)))) {
        rows.add(Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray());
      }
    }
    return rows.toArray(double[][]::new);
  }

  private static double[] column(double[][] rows, int column) {
    return Arrays.stream(rows).mapToDouble(r -> r[column]).toArray();
  }

  /** Half a unit of the last printed digit. */
  private static void assertPrinted(String printed, double found) {
    int decimals = printed.contains(".") ? printed.length() - printed.indexOf('.') - 1 : 0;
    assertEquals(
        Double.parseDouble(printed), found, 0.5 * Math.pow(10, -decimals) * (1 + 1e-9), printed);
  }

  private static double rectangular(double halfWidth) {
    return halfWidth / Math.sqrt(3);
  }

  /** H.1, end-gauge calibration, lengths in nm: u 32, ν 16, U₉₉ 93; second order 34. */
  @Test
  void endGaugeCalibration() {
    double length = 50_000_623;
    double expansion = 11.5e-6;
    double difference = 215;
    Budget ofDifference =
        new Budget(
            List.of(
                new Contribution("repeated observations", 5.8),
                new Contribution("comparator, random", 3.9),
                new Contribution("comparator, systematic", 6.7)));
    assertPrinted("9.7", ofDifference.combined());
    double degreesOfDifference =
        Math.pow(ofDifference.combined(), 4)
            / (Math.pow(5.8, 4) / 24 + Math.pow(3.9, 4) / 5 + Math.pow(6.7, 4) / 8);
    assertEquals(25.4472507773627, degreesOfDifference, 1e-10);

    double meanTemperature = -0.1;
    double byExpansions = length * Math.abs(meanTemperature) * rectangular(1e-6);
    double byTemperatures = length * expansion * rectangular(0.05);
    Budget budget =
        new Budget(
            List.of(
                new Contribution("standard", 25),
                new Contribution("difference", ofDifference.combined()),
                new Contribution("expansion coefficients", byExpansions),
                new Contribution("temperatures", byTemperatures)));
    assertPrinted("2.9", byExpansions);
    assertPrinted("16.6", byTemperatures);
    assertPrinted("32", budget.combined());
    assertEquals(31.6638791110086, budget.combined(), 1e-10);
    assertEquals("standard", budget.greatestFirst().get(0).source());
    assertEquals(
        Math.pow(25 / 31.6638791110086, 2), budget.shareOf("standard"), 1e-12, "share of variance");

    double degrees =
        Math.pow(budget.combined(), 4)
            / (Math.pow(25, 4) / 18
                + Math.pow(ofDifference.combined(), 4) / degreesOfDifference
                + Math.pow(byExpansions, 4) / 50
                + Math.pow(byTemperatures, 4) / 2);
    assertEquals(16.7518557376, degrees, 1e-9);
    double factor =
        new TDistribution(null, Math.floor(degrees)).inverseCumulativeProbability(0.995);
    assertPrinted("2.92", factor);
    assertPrinted("93", Math.round(factor * 100) / 100.0 * Math.round(budget.combined()));
    assertPrinted("50000838", 50000623 + difference);

    double temperature = Math.hypot(0.2, 0.5 / Math.sqrt(2));
    Budget second =
        new Budget(
            List.of(
                new Contribution("first order", budget.combined()),
                new Contribution(
                    "expansions with temperature", length * rectangular(1e-6) * temperature),
                new Contribution(
                    "expansion with temperatures",
                    length * rectangular(2e-6) * rectangular(0.05))));
    assertPrinted("34", second.combined());
    assertEquals(33.8065454295, second.combined(), 1e-9);
  }

  /** H.2, resistance and reactance measured together: correlated inputs, three outputs. */
  @Test
  void simultaneousResistanceAndReactance() throws IOException {
    double[][] sets = rows("gum-h2.csv");
    int n = sets.length;
    double volts = mean(column(sets, 1));
    double amperes = mean(column(sets, 2)) / 1000;
    double phase = mean(column(sets, 3));
    assertPrinted("4.9990", volts);
    assertPrinted("19.6610", amperes * 1000);
    assertPrinted("1.04446", phase);
    double[][] readings =
        Arrays.stream(sets).map(r -> Arrays.copyOfRange(r, 1, 4)).toArray(double[][]::new);
    for (double[] r : readings) {
      r[1] /= 1000;
    }
    RealMatrix ofMeans = new Covariance(readings).getCovarianceMatrix().scalarMultiply(1.0 / n);
    assertPrinted("0.0032", Math.sqrt(ofMeans.getEntry(0, 0)));
    assertPrinted("0.0095", 1000 * Math.sqrt(ofMeans.getEntry(1, 1)));
    assertPrinted("0.00075", Math.sqrt(ofMeans.getEntry(2, 2)));
    RealMatrix r = new PearsonsCorrelation(readings).getCorrelationMatrix();
    assertPrinted("-0.36", r.getEntry(0, 1));
    assertPrinted("0.86", r.getEntry(0, 2));
    assertPrinted("-0.65", r.getEntry(1, 2));

    double cos = Math.cos(phase);
    double sin = Math.sin(phase);
    double ohms = volts / amperes;
    RealMatrix sensitivities =
        new Array2DRowRealMatrix(
            new double[][] {
              {cos / amperes, -ohms * cos / amperes, -ohms * sin},
              {sin / amperes, -ohms * sin / amperes, ohms * cos},
              {1 / amperes, -ohms / amperes, 0}
            });
    assertPrinted("127.732", ohms * cos);
    assertPrinted("219.847", ohms * sin);
    assertPrinted("254.260", ohms);
    RealMatrix out = sensitivities.multiply(ofMeans).multiply(sensitivities.transpose());
    double uR = Math.sqrt(out.getEntry(0, 0));
    double uX = Math.sqrt(out.getEntry(1, 1));
    double uZ = Math.sqrt(out.getEntry(2, 2));
    assertPrinted("0.071", uR);
    assertEquals(0.295581677359, uX, 1e-11, "printed 0.295");
    assertPrinted("0.236", uZ);
    assertPrinted("-0.588", out.getEntry(0, 1) / uR / uX);
    assertPrinted("-0.485", out.getEntry(0, 2) / uR / uZ);
    assertPrinted("0.993", out.getEntry(1, 2) / uX / uZ);
  }

  /** H.3, calibration of a thermometer by a straight line. */
  @Test
  void thermometerCalibration() throws IOException {
    SimpleRegression line = new SimpleRegression();
    double[][] points = rows("gum-h3.csv");
    for (double[] p : points) {
      line.addData(p[0] - 20, p[1]);
    }
    assertPrinted("-0.1712", line.getIntercept());
    assertPrinted("0.0029", line.getInterceptStdErr());
    assertPrinted("0.00218", line.getSlope());
    assertPrinted("0.00067", line.getSlopeStdErr());
    assertPrinted("0.0035", Math.sqrt(line.getMeanSquareError()));
    double meanT = mean(column(points, 0)) - 20;
    double covariance = -meanT * Math.pow(line.getSlopeStdErr(), 2);
    assertPrinted("-0.930", covariance / line.getInterceptStdErr() / line.getSlopeStdErr());
    assertPrinted("-0.1494", line.predict(10));
    double variance =
        Math.pow(line.getInterceptStdErr(), 2)
            + Math.pow(10 * line.getSlopeStdErr(), 2)
            + 20 * covariance;
    assertPrinted("0.0041", Math.sqrt(variance));
    assertEquals(9, points.length - 2);
  }

  /** H.5, analysis of variance of a voltage over ten days, µV. */
  @Test
  void voltageOverTenDays() throws IOException {
    double[][] days = rows("gum-h5.csv");
    double mean = mean(column(days, 1));
    assertPrinted("10.000097", mean);
    double between = 0;
    double within = 0;
    for (double[] day : days) {
      between += Math.pow(1e6 * (day[1] - mean), 2) / (days.length - 1);
      within += day[2] * day[2] / days.length;
    }
    assertPrinted("57", Math.sqrt(between));
    assertPrinted("85", Math.sqrt(within));
    assertEquals(2.26151926999, 5 * between / within, 1e-9, "printed 2.25, from 57 and 85");
    assertPrinted("2.25", 5 * Math.pow(57.0 / 85, 2));
  }

  private static double mean(double[] values) {
    return Arrays.stream(values).average().orElseThrow();
  }
}
