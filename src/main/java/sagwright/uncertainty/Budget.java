package sagwright.uncertainty;

import java.util.Comparator;
import java.util.List;

/**
 * A first-order uncertainty budget (JCGM 100:2008, 5.1): independent contributions whose squares
 * add up to the square of the combined standard uncertainty.
 */
public record Budget(List<Contribution> contributions) {
  public Budget {
    contributions = List.copyOf(contributions);
  }

  /** The combined standard uncertainty, in the unit of the answer. */
  public double combined() {
    double sum = 0;
    for (Contribution c : contributions) {
      sum += c.standardUncertainty() * c.standardUncertainty();
    }
    return Math.sqrt(sum);
  }

  /** The contributions, greatest first. */
  public List<Contribution> greatestFirst() {
    return contributions.stream()
        .sorted(Comparator.comparingDouble(Contribution::standardUncertainty).reversed())
        .toList();
  }

  /** The share of one source in the combined variance, 0 to 1; 0 where the source is not listed. */
  public double shareOf(String source) {
    double all = combined();
    if (all == 0) {
      return 0;
    }
    double sum = 0;
    for (Contribution c : contributions) {
      if (c.source().equals(source)) {
        sum += c.standardUncertainty() * c.standardUncertainty();
      }
    }
    return sum / (all * all);
  }
}
