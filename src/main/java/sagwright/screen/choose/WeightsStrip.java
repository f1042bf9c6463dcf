package sagwright.screen.choose;

import java.util.List;
import java.util.function.Consumer;
import sagwright.choose.RankingWeights;
import sagwright.quantity.Figures;
import sagwright.screen.AskStrip;
import sagwright.screen.ComplaintException;
import sagwright.screen.Typed;

/** Asks what ranks blanks: four weights, of which the proportion counts. */
final class WeightsStrip {
  private static final List<String> NAMES = List.of("stiffness", "weight", "balance", "spare");

  private WeightsStrip() {}

  /**
   * @param now the weights that stand in the fields at first
   * @param keep hears what is typed
   * @param complain hears one line where it cannot be
   */
  static AskStrip of(
      RankingWeights now,
      Consumer<RankingWeights> keep,
      Consumer<String> complain,
      Runnable leave) {
    double[] weights = {now.stiffness(), now.mass(), now.balance(), now.spare()};
    return new AskStrip(
        "choose.weights",
        "What ranks blanks, in what proportion? 1 0 0 0: stiffness first.",
        List.of(0, 1, 2, 3).stream()
            .map(i -> new AskStrip.Asked(NAMES.get(i), Figures.asTyped(weights[i])))
            .toList(),
        typed -> {
          try {
            keep.accept(read(typed));
          } catch (ComplaintException e) {
            complain.accept(e.getMessage());
          }
        },
        leave);
  }

  private static RankingWeights read(List<String> typed) throws ComplaintException {
    double[] weights = new double[NAMES.size()];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = Typed.number(NAMES.get(i), typed.get(i));
    }
    try {
      return new RankingWeights(weights[0], weights[1], weights[2], weights[3]);
    } catch (IllegalArgumentException e) {
      throw new ComplaintException("What ranks: " + e.getMessage());
    }
  }
}
