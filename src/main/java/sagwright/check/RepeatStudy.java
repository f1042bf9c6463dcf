package sagwright.check;

import org.apache.commons.math3.distribution.FDistribution;

/**
 * How well the whole bench repeats: several shafts, each tested several times by several hands (or
 * on several days), taken apart by a crossed two-way analysis of variance (gauge study of the
 * automotive measurement systems manual, ANOVA method).
 *
 * @param shafts what the shafts explain
 * @param hands what the hands explain
 * @param both what belongs to a hand on a shaft alone
 * @param repeats what is left between repeats
 * @param interactionChance the chance of so great a {@code both} if there were nothing in it
 */
public record RepeatStudy(
    Term shafts, Term hands, Term both, Term repeats, double interactionChance, int trials) {
  /** Above this chance {@code both} is counted with the repeats (common practice, no source). */
  private static final double POOLED_ABOVE_CHANCE = 0.25;

  /** √2: a gauge tells apart what lies so many of its standard deviations apart (as the manual). */
  private static final double CATEGORY_FACTOR = 1.41;

  /**
   * @param readings {@code [shaft][hand][trial]}, two or more of each, none left out
   */
  public static RepeatStudy of(double[][][] readings) {
    int a = readings.length;
    int b = a == 0 ? 0 : readings[0].length;
    int n = b == 0 ? 0 : readings[0][0].length;
    if (a < 2 || b < 2 || n < 2) {
      throw new IllegalArgumentException("a study wants two shafts, two hands, two trials or more");
    }
    double[] ofShaft = new double[a];
    double[] ofHand = new double[b];
    double[][] ofCell = new double[a][b];
    double grand = 0;
    for (int i = 0; i < a; i++) {
      for (int j = 0; j < b; j++) {
        if (readings[i].length != b || readings[i][j].length != n) {
          throw new IllegalArgumentException("every hand tests every shaft equally often");
        }
        for (double reading : readings[i][j]) {
          ofCell[i][j] += reading / n;
        }
        ofShaft[i] += ofCell[i][j] / b;
        ofHand[j] += ofCell[i][j] / a;
        grand += ofCell[i][j] / a / b;
      }
    }
    double shafts = b * n * squaresAbout(ofShaft, grand);
    double hands = a * n * squaresAbout(ofHand, grand);
    double cells = 0;
    double repeats = 0;
    for (int i = 0; i < a; i++) {
      cells += n * squaresAbout(ofCell[i], grand);
      for (int j = 0; j < b; j++) {
        repeats += squaresAbout(readings[i][j], ofCell[i][j]);
      }
    }
    Term both = new Term(Math.max(0, cells - shafts - hands), (a - 1) * (b - 1));
    Term within = new Term(repeats, a * b * (n - 1));
    return new RepeatStudy(
        new Term(shafts, a - 1), new Term(hands, b - 1), both, within, chance(both, within), n);
  }

  private static double squaresAbout(double[] values, double centre) {
    double sum = 0;
    for (double value : values) {
      sum += (value - centre) * (value - centre);
    }
    return sum;
  }

  private static double chance(Term both, Term within) {
    return 1
        - new FDistribution(null, both.degreesOfFreedom(), within.degreesOfFreedom())
            .cumulativeProbability(both.meanSquare() / within.meanSquare());
  }

  /** F of {@code both} against the repeats. */
  public double interactionF() {
    return both.meanSquare() / repeats.meanSquare();
  }

  public boolean isPooled() {
    return interactionChance > POOLED_ABOVE_CHANCE;
  }

  /** Variance of one test on one shaft by one hand. */
  public double repeatVariance() {
    return isPooled() ? repeats.with(both).meanSquare() : repeats.meanSquare();
  }

  /** Variance between hands, the part that differs from shaft to shaft among it. */
  public double handVariance() {
    if (isPooled()) {
      return Math.max(0, (hands.meanSquare() - repeatVariance()) / (shaftCount() * trials));
    }
    double plain = (hands.meanSquare() - both.meanSquare()) / (shaftCount() * trials);
    return Math.max(0, plain) + interactionVariance();
  }

  /** Variance between shafts. */
  public double shaftVariance() {
    double error = isPooled() ? repeatVariance() : both.meanSquare();
    return Math.max(0, (shafts.meanSquare() - error) / (handCount() * trials));
  }

  /** Variance of the bench with all hands: repeats and hands. */
  public double benchVariance() {
    return repeatVariance() + handVariance();
  }

  /** The bench's standard deviation in percent of that of all readings. */
  public double percentOfStudy() {
    return 100 * Math.sqrt(benchVariance() / (benchVariance() + shaftVariance()));
  }

  /** How many kinds of shaft the bench tells apart. */
  public double categories() {
    return CATEGORY_FACTOR * Math.sqrt(shaftVariance() / benchVariance());
  }

  private double interactionVariance() {
    return Math.max(0, (both.meanSquare() - repeats.meanSquare()) / trials);
  }

  private int shaftCount() {
    return shafts.degreesOfFreedom() + 1;
  }

  private int handCount() {
    return hands.degreesOfFreedom() + 1;
  }

  /** One row of the table of variances. */
  public record Term(double sumOfSquares, int degreesOfFreedom) {
    public double meanSquare() {
      return sumOfSquares / degreesOfFreedom;
    }

    Term with(Term other) {
      return new Term(sumOfSquares + other.sumOfSquares, degreesOfFreedom + other.degreesOfFreedom);
    }
  }
}
