package sagwright.choose;

import java.util.Locale;
import java.util.StringJoiner;
import java.util.stream.DoubleStream;
import sagwright.grade.Aim;
import sagwright.grade.GradedForecast;

/**
 * What a shop weighs when it puts blanks in order, 0 or above, their sum above 0; only their
 * proportion counts. With stiffness alone, as unless set otherwise, the chance ranks and nothing
 * else is mixed in.
 *
 * @param stiffness the chance that all that is asked lies within its tolerance
 * @param mass how near the finished mass comes to the ask
 * @param balance how near the balance comes to the ask
 * @param spare how much wood is left for planing by the way
 */
public record RankingWeights(double stiffness, double mass, double balance, double spare) {
  /** Unless the shop sets others. */
  public static final RankingWeights STIFFNESS_FIRST = new RankingWeights(1, 0, 0, 0);

  /** A spare of so much, in mm, counts half of what the greatest spare would. Ours, no source. */
  private static final double MIDDLING_SPARE_MM = 1;

  public RankingWeights {
    boolean each =
        DoubleStream.of(stiffness, mass, balance, spare)
            .allMatch(weight -> weight >= 0 && Double.isFinite(weight));
    if (!each || !(stiffness + mass + balance + spare > 0)) {
      throw new IllegalArgumentException("weights are 0 or above, and not all are 0");
    }
  }

  public boolean isStiffnessAlone() {
    return mass == 0 && balance == 0 && spare == 0;
  }

  /**
   * The weighted mean, 0 to 1, of how well a blank that can serve does. What is not asked, or not
   * known because the blank was not weighed, takes no part.
   */
  double scoreOf(Standing standing) {
    GradedForecast graded = standing.graded();
    double sum = stiffness * standing.chance();
    double weights = stiffness;
    Aim massAsked = graded.order().ask().massG();
    if (isKnown(massAsked, graded.forecast().massG())) {
      sum += mass * nearness(massAsked, graded.forecast().massG());
      weights += mass;
    }
    Aim balanceAsked = graded.order().ask().balanceFromButtMm();
    if (isKnown(balanceAsked, graded.forecast().balanceFromButtMm())) {
      sum += balance * nearness(balanceAsked, graded.forecast().balanceFromButtMm());
      weights += balance;
    }
    double left = Math.max(0, standing.leastSpareMm());
    sum += spare * left / (left + MIDDLING_SPARE_MM);
    weights += spare;
    return weights == 0 ? 0 : sum / weights;
  }

  private static boolean isKnown(Aim asked, Double figure) {
    return asked != null && asked.tolerance() != null && asked.tolerance() > 0 && figure != null;
  }

  /** 1 on the ask, ½ at the edge of its tolerance, falling towards 0. */
  private static double nearness(Aim asked, double figure) {
    double off = (figure - asked.value()) / asked.tolerance();
    return 1 / (1 + off * off);
  }

  /** What ranks, as one line for people. */
  public String inWords() {
    if (isStiffnessAlone()) {
      return "the chance of the stiffness, then nearness to the ask, then spare";
    }
    double sum = stiffness + mass + balance + spare;
    StringJoiner words = new StringJoiner(", ");
    add(words, "stiffness", stiffness / sum);
    add(words, "weight", mass / sum);
    add(words, "balance", balance / sum);
    add(words, "spare", spare / sum);
    return words.toString();
  }

  private static void add(StringJoiner words, String what, double share) {
    if (share > 0) {
      words.add(String.format(Locale.ROOT, "%s %.0f %%", what, 100 * share));
    }
  }
}
