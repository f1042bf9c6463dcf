package sagwright.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;

/**
 * What a finish plan cannot be (docs/contract.md, section 5), each thing with its key. Touching
 * ends are allowed.
 */
public final class FinishCheck {
  /** A diameter worked out between knots is not known better. */
  private static final double ROUNDING_MM = -Cut.LEAST_SPARE_THAT_FITS_MM;

  private final FinishPlan plan;
  private final List<FinishProblem> problems = new ArrayList<>();

  private FinishCheck(FinishPlan plan) {
    this.plan = plan;
  }

  /** What is wrong with a plan, in the document's order; empty where nothing is. */
  public static List<FinishProblem> problemsOf(FinishPlan plan) {
    FinishCheck check = new FinishCheck(plan);
    check.notBelowZero("finish.diameterUncertaintyMm", plan.diameterUncertaintyMm());
    if (plan.cutFromMm() != null) {
      check.notBelowZero("finish.cutFromMm", plan.cutFromMm());
    }
    if (plan.ferrule() != null) {
      check.ferrule(plan.ferrule());
    }
    if (plan.splice() != null) {
      check.splice(plan.splice());
    }
    check.weights();
    check.extras();
    return List.copyOf(check.problems);
  }

  /** What is wrong with knots that are to become a taper of this length; empty where nothing is. */
  public static Optional<FinishProblem> problemOfKnots(List<Station> knots, double lengthMm) {
    if (!(lengthMm > 0)) {
      return problem("finish.lengthMm", "must be above 0, not " + lengthMm);
    }
    int n = knots.size();
    if (n < 2) {
      return problem("finish.taper", "needs two knots or more, has " + n);
    }
    if (knots.get(0).xMm() != 0) {
      return problem("finish.taper[0].xMm", "must be 0, the tip end, not " + knots.get(0).xMm());
    }
    for (int i = 0; i < n; i++) {
      Station knot = knots.get(i);
      if (i > 0 && !(knot.xMm() > knots.get(i - 1).xMm())) {
        return problem(
            "finish.taper[" + i + "].xMm", knot.xMm() + " does not lie beyond the knot before it");
      }
      if (!(knot.depthMm() > 0)) {
        return problem(
            "finish.taper[" + i + "].diameterMm", "must be above 0, not " + knot.depthMm());
      }
    }
    double last = knots.get(n - 1).xMm();
    return last == lengthMm
        ? Optional.empty()
        : problem(
            "finish.taper[" + (n - 1) + "].xMm",
            "the last knot must lie at the length " + lengthMm + ", not at " + last);
  }

  private static Optional<FinishProblem> problem(String key, String whatIsWrong) {
    return Optional.of(new FinishProblem(key, whatIsWrong));
  }

  private void ferrule(Ferrule ferrule) {
    notBelowZero("finish.ferrule.lengthMm", ferrule.lengthMm());
    notBelowZero("finish.ferrule.boreMm", ferrule.boreMm());
    notBelowZero("finish.ferrule.densityKgM3", ferrule.densityKgM3());
    if (ferrule.lengthMm() > plan.lengthMm()) {
      add("finish.ferrule.lengthMm", ferrule.lengthMm() + " is longer than the shaft");
    } else if (ferrule.boreMm() > leastDiameter(0, Math.max(0, ferrule.lengthMm())) + ROUNDING_MM) {
      add("finish.ferrule.boreMm", ferrule.boreMm() + " is wider than the tip");
    }
  }

  private void splice(Splice splice) {
    notBelowZero("finish.splice.coreHalfAtButtMm", splice.coreHalfAtButtMm());
    notBelowZero("finish.splice.densityKgM3", splice.densityKgM3());
    notBelowZero("finish.splice.modulusUncertaintyPercent", splice.modulusUncertaintyPercent());
    if (!(splice.modulusMPa() > 0)) {
      add("finish.splice.modulusMPa", "must be above 0, not " + splice.modulusMPa());
    }
    if (splice.fromMm() > plan.lengthMm()) {
      add("finish.splice.fromMm", splice.fromMm() + " lies past the butt");
    } else if (splice.fromMm() < 0) {
      add("finish.splice.fromMm", splice.fromMm() + " lies before the tip");
    } else if (splice.fromMm() < ferruleEnd()) {
      add("finish.splice.fromMm", splice.fromMm() + " lies under the ferrule");
    }
    double buttRadius = plan.diameterAt(plan.lengthMm()) / 2;
    if (splice.coreHalfAtButtMm() > buttRadius + ROUNDING_MM) {
      add(
          "finish.splice.coreHalfAtButtMm",
          splice.coreHalfAtButtMm() + " is above the butt's radius " + buttRadius);
    }
  }

  private void weights() {
    List<Weight> weights = plan.weights();
    for (int i = 0; i < weights.size(); i++) {
      Weight weight = weights.get(i);
      String key = "finish.weights[" + i + "]";
      notBelowZero(key + ".densityKgM3", weight.densityKgM3());
      if (!(weight.diameterMm() > 0)) {
        add(key + ".diameterMm", "must be above 0, not " + weight.diameterMm());
      }
      if (!(weight.toMm() > weight.fromMm())) {
        add(key + ".toMm", weight.toMm() + " does not lie beyond fromMm " + weight.fromMm());
      } else if (weight.fromMm() < 0) {
        add(key + ".fromMm", weight.fromMm() + " lies before the tip");
      } else if (weight.fromMm() < ferruleEnd()) {
        add(key + ".fromMm", weight.fromMm() + " lies under the ferrule");
      } else if (weight.toMm() > plan.lengthMm()) {
        add(key + ".toMm", weight.toMm() + " lies past the butt");
      } else {
        overlap(i);
        double room = leastDiameter(weight.fromMm(), weight.toMm());
        if (weight.diameterMm() > room + ROUNDING_MM) {
          add(key + ".diameterMm", weight.diameterMm() + " is wider than the round, " + room);
        }
      }
    }
  }

  private void overlap(int i) {
    Weight weight = plan.weights().get(i);
    for (int j = 0; j < i; j++) {
      Weight other = plan.weights().get(j);
      if (weight.fromMm() < other.toMm() && other.fromMm() < weight.toMm()) {
        add("finish.weights[" + i + "].fromMm", "overlaps finish.weights[" + j + "]");
        return;
      }
    }
  }

  private void extras() {
    for (int i = 0; i < plan.extras().size(); i++) {
      Extra extra = plan.extras().get(i);
      notBelowZero("finish.extras[" + i + "].massG", extra.massG());
      if (!(extra.xMm() >= 0 && extra.xMm() <= plan.lengthMm())) {
        add("finish.extras[" + i + "].xMm", extra.xMm() + " lies off the shaft");
      }
    }
  }

  private double ferruleEnd() {
    return plan.ferrule() == null ? 0 : plan.ferrule().lengthMm();
  }

  /** The least finished diameter from one place to another: at an end or at a knot between. */
  private double leastDiameter(double fromMm, double toMm) {
    Taper taper = plan.taper();
    double least = Math.min(taper.depthAt(fromMm), taper.depthAt(toMm));
    for (Station knot : taper.stations()) {
      if (fromMm < knot.xMm() && knot.xMm() < toMm) {
        least = Math.min(least, knot.depthMm());
      }
    }
    return least;
  }

  private void notBelowZero(String key, double value) {
    if (!(value >= 0)) {
      add(key, "cannot be below 0: " + value);
    }
  }

  private void add(String key, String whatIsWrong) {
    problems.add(new FinishProblem(key, whatIsWrong));
  }
}
