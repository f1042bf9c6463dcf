package sagwright.survey;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * Which model the data bear: the simplest, unless a less simple one is better by more than luck.
 *
 * <p>The contract's χ² weighs by what is independent between runs alone. Caliper errors are common
 * to all runs and yet act on each set-up differently: to that χ² they look like a modulus that
 * varies. The choice therefore takes χ² with the full covariance of what the runs showed, own parts
 * and common parts (generalised least squares), and from it Akaike's criterion for few runs. Going
 * from the simplest model up, a model with more parameters is taken where its criterion is lower by
 * more than {@link #MARGIN}: those four and more above the best "have considerably less support"
 * (Burnham and Anderson, Model Selection and Multimodel Inference, 2002, 2.6). With that margin
 * some one in a hundred even shafts with 8 set-ups is taken for another, and soft thirds and
 * straight gradients of a tenth are found (SurveyStudyTest).
 *
 * <p>One run that is simply wrong can make an even shaft look like pieces. So the model found is
 * weighed against each simpler one with no borders and one run freed: a parameter more, and 2·ln n
 * for the choice among n runs. Where that is better by the same margin, and leaves the other runs
 * no more χ² than 19 in 20 would have, the simpler model is proposed; the run then stands out.
 */
final class ModelChoice {
  static final double MARGIN = 4;
  static final int MOST_PIECES = 4;

  private final SurveyGround ground;

  ModelChoice(SurveyGround ground) {
    this.ground = ground;
  }

  /**
   * A shape's fit with all that is known of the errors.
   *
   * @param criterion Akaike's, for few runs
   */
  record Evidence(ModelShape shape, double chiSquared, double criterion) {}

  /**
   * What was chosen, and what stood against it.
   *
   * @param tried every shape that the runs bear, simplest first
   * @param freedRun the run that counts as wrong in this choice, or −1
   */
  record Choice(Evidence chosen, List<Evidence> tried, int freedRun) {
    /** One shape of each kind that the runs bear; of pieces the number that suits best. */
    List<ModelShape> shapes() {
      Map<ModelKind, Evidence> best = new EnumMap<>(ModelKind.class);
      for (Evidence e : tried) {
        Evidence before = best.get(e.shape().kind());
        if (before == null || e.criterion() < before.criterion() - MARGIN) {
          best.put(e.shape().kind(), e);
        }
      }
      best.put(chosen.shape().kind(), chosen);
      return best.values().stream().map(Evidence::shape).toList();
    }

    /** Why it was chosen, as one sentence. */
    String reason() {
      if (tried.size() == 1) {
        return "one modulus is all that these runs can tell";
      }
      String name = inWords(chosen.shape());
      if (freedRun >= 0) {
        return "all runs but run " + (freedRun + 1) + " agree with " + name;
      }
      if (chosen.shape().equals(ModelShape.ONE)) {
        return "no model that lets the modulus or the ratio vary explains the runs better than luck"
            + " would";
      }
      double gain =
          tried.stream()
                  .filter(e -> e.shape().parameters() < chosen.shape().parameters())
                  .mapToDouble(Evidence::criterion)
                  .min()
                  .orElseThrow()
              - chosen.criterion();
      return String.format(
          Locale.ROOT,
          "%s explains the runs better than anything simpler, by %.0f in Akaike's criterion where"
              + " %.0f would do, and nothing less simple does clearly better",
          name,
          gain,
          MARGIN);
    }

    private static String inWords(ModelShape shape) {
      return switch (shape.kind()) {
        case ONE -> "one modulus";
        case RATIO -> "one modulus with an E/G of its own";
        case STRAIGHT -> "a modulus that runs straight from tip to butt";
        case PIECES -> "a modulus in " + shape.pieces() + " pieces";
      };
    }
  }

  /** For a shaft that no other model is tried on. */
  static Choice onlyOne(SurveyGround ground) {
    Evidence one = new ModelChoice(ground).evidence(ground, ModelShape.ONE);
    return new Choice(one, List.of(one), -1);
  }

  Choice choose() {
    List<Evidence> tried = new ArrayList<>();
    for (ModelShape shape : shapes()) {
      boolean hasEnoughRuns = shape.equals(ModelShape.ONE) || shape.hasAicc(ground.size());
      if (hasEnoughRuns && Bearing.borne(ground, shape) != null) {
        Evidence evidence = evidence(ground, shape);
        if (evidence != null) {
          tried.add(evidence);
        }
      }
    }
    Evidence chosen = simplestBorne(tried);
    return withOneRunFreed(new Choice(chosen, tried, -1));
  }

  private static List<ModelShape> shapes() {
    List<ModelShape> shapes = new ArrayList<>();
    shapes.add(ModelShape.ONE);
    shapes.add(ModelShape.RATIO);
    shapes.add(ModelShape.STRAIGHT);
    for (int pieces = 2; pieces <= MOST_PIECES; pieces++) {
      shapes.add(ModelShape.inPieces(pieces));
    }
    return shapes;
  }

  private Evidence evidence(SurveyGround of, ModelShape shape) {
    FittedModel model = FittedModel.of(shape, of.runs(), of.fullWeights(shape));
    if (model == null) {
      return null;
    }
    // An r below 0 may stand in the table with its uncertainty, but is never what is proposed.
    double chiSquared = model.isWood() ? model.fit().chiSquared() : Double.POSITIVE_INFINITY;
    return new Evidence(shape, chiSquared, shape.aicc(chiSquared, ground.size()));
  }

  /** The first is the simplest; of two as simple the better one speaks. */
  private static Evidence simplestBorne(List<Evidence> tried) {
    Evidence chosen = tried.get(0);
    int at = 1;
    while (at < tried.size()) {
      Evidence best = tried.get(at);
      int parameters = best.shape().parameters();
      at++;
      while (at < tried.size() && tried.get(at).shape().parameters() == parameters) {
        best = tried.get(at).criterion() < best.criterion() ? tried.get(at) : best;
        at++;
      }
      if (best.criterion() < chosen.criterion() - MARGIN) {
        chosen = best;
      }
    }
    return chosen;
  }

  private Choice withOneRunFreed(Choice choice) {
    Choice best = choice;
    double least = choice.chosen().criterion() - MARGIN;
    int n = ground.size();
    for (Evidence simpler : choice.tried()) {
      int freed = simpler.shape().parameters() + 1;
      boolean isSimpler = simpler.shape().parameters() < choice.chosen().shape().parameters();
      boolean hasBorders = simpler.shape().kind() == ModelKind.PIECES;
      if (!isSimpler || hasBorders || n - freed - 1 <= 0) {
        continue;
      }
      for (int run = 0; run < n; run++) {
        Evidence rest = evidence(ground.without(run), simpler.shape());
        if (rest == null || !fits(rest, n - 1)) {
          continue;
        }
        double criterion =
            rest.chiSquared()
                + 2 * freed
                + 2.0 * freed * (freed + 1) / (n - freed - 1)
                + 2 * Math.log(n);
        if (criterion < least) {
          least = criterion;
          best = new Choice(simpler, choice.tried(), run);
        }
      }
    }
    return best;
  }

  private static boolean fits(Evidence evidence, int runs) {
    int freedom = runs - evidence.shape().parameters();
    return freedom > 0
        && evidence.chiSquared()
            <= new ChiSquaredDistribution(null, freedom).inverseCumulativeProbability(0.95);
  }
}
