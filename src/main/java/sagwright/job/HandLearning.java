package sagwright.job;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How well one hand guesses: its guesses beside what the bench then showed, oldest first.
 *
 * @param hand whose initials, empty for nobody's
 */
public record HandLearning(String hand, List<Felt> felt) {
  /** So many of the last are spoken of. */
  public static final int LAST = 10;

  /** A leaning is looked for in so many of the last, and in no fewer than half of that. */
  private static final int LEANING = 20;

  /** A leaning smaller than this is not worth a word. */
  private static final double LEAST_LEANING = 0.03;

  /** In standard errors: about one hand in forty would be told of a leaning that it has not. */
  private static final double SEEN_FROM = 2.3;

  public HandLearning {
    felt = List.copyOf(felt);
  }

  /**
   * A guess and its answer, both of the shaft as it lay.
   *
   * @param at when
   * @param guessedNPerMm above 0
   * @param answerNPerMm of the bench, above 0
   */
  public record Felt(Instant at, String tag, double guessedNPerMm, double answerNPerMm) {
    /** How far the guess lay off, in percent of the answer: above 0 where it was too stiff. */
    public double offPercent() {
      return 100 * (guessedNPerMm / answerNPerMm - 1);
    }

    private double logRatio() {
      return Math.log(guessedNPerMm / answerNPerMm);
    }
  }

  /** How well it guesses and where it leans, in words for whose hand it is. */
  public String inWords() {
    if (felt.isEmpty()) {
      return "No guesses yet.";
    }
    return (lately() + "  " + leaning()).trim();
  }

  private String lately() {
    int n = felt.size();
    if (n < LAST) {
      return n == 1
          ? "One guess so far, " + within(felt, n) + "."
          : "All " + n + " guesses so far were " + within(felt, n) + ".";
    }
    List<Felt> last = felt.subList(n - LAST, n);
    String words = "Nine of the last ten guesses were " + within(last, LAST - 1);
    if (n >= 2 * LAST) {
      words += "; of the first ten, nine were " + within(felt.subList(0, LAST), LAST - 1);
    }
    return words + ".";
  }

  /** The bound that so many of the guesses keep. */
  private static String within(List<Felt> of, int many) {
    return String.format(Locale.ROOT, "within %.0f %%", bound(of, many));
  }

  /** In whole percent, upwards. */
  private static double bound(List<Felt> of, int many) {
    double[] off = of.stream().mapToDouble(f -> Math.abs(f.offPercent())).sorted().toArray();
    return Math.max(1, Math.ceil(off[many - 1] - 1e-9));
  }

  /** The bound in percent that nine of the last ten guesses keep; NaN for fewer than ten. */
  public double lastWithinPercent() {
    int n = felt.size();
    return n < LAST ? Double.NaN : bound(felt.subList(n - LAST, n), LAST - 1);
  }

  private String leaning() {
    List<Felt> last = felt.subList(Math.max(0, felt.size() - LEANING), felt.size());
    if (last.size() < LEANING / 2) {
      return "";
    }
    double middle =
        last.stream().mapToDouble(Felt::answerNPerMm).sorted().toArray()[last.size() / 2];
    Mean soft = Mean.of(last.stream().filter(f -> f.answerNPerMm() < middle).toList());
    Mean stiff = Mean.of(last.stream().filter(f -> f.answerNPerMm() >= middle).toList());
    if (soft.isApartFrom(stiff)) {
      boolean towardsMiddle = soft.log > stiff.log;
      return towardsMiddle
          ? "Soft ones are called too stiff, stiff ones too soft."
          : "Soft ones are called too soft, stiff ones too stiff.";
    }
    Mean all = Mean.of(last);
    if (all.isSeen()) {
      return String.format(
          Locale.ROOT,
          "On the whole %.0f %% too %s.",
          100 * Math.abs(Math.expm1(all.log)),
          all.log > 0 ? "stiff" : "soft");
    }
    return "It leans to neither side.";
  }

  /** Mean of the logarithms of guess over answer, and its standard error. */
  private record Mean(double log, double standardError) {
    static Mean of(List<Felt> felt) {
      double[] logs = felt.stream().mapToDouble(Felt::logRatio).toArray();
      int n = logs.length;
      double mean = Arrays.stream(logs).average().orElse(0);
      double squares = Arrays.stream(logs).map(l -> (l - mean) * (l - mean)).sum();
      return new Mean(mean, n < 2 ? Double.POSITIVE_INFINITY : Math.sqrt(squares / (n - 1) / n));
    }

    boolean isSeen() {
      return Math.abs(log) >= LEAST_LEANING && Math.abs(log) > SEEN_FROM * standardError;
    }

    boolean isApartFrom(Mean other) {
      double apart = Math.abs(log - other.log);
      return apart >= LEAST_LEANING
          && apart > SEEN_FROM * Math.hypot(standardError, other.standardError);
    }
  }
}
