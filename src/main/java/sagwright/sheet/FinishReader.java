package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishCheck;
import sagwright.finish.FinishPlan;
import sagwright.finish.FinishProblem;
import sagwright.finish.Weight;

/** The {@code finish} of an order: its structure; what it cannot be is left to the checks. */
final class FinishReader {
  private FinishReader() {}

  static FinishPlan readFrom(JsonObject order) throws BadDocumentException {
    JsonObject json =
        order.object(
            "finish",
            "lengthMm",
            "diameterUncertaintyMm",
            "taper",
            "cutFromMm",
            "ferrule",
            "splice",
            "weights",
            "extras");
    Taper taper = taper(json);
    double lengthMm = taper.lengthMm();
    return new FinishPlan(
        taper,
        json.numberOr(
            "diameterUncertaintyMm",
            FinishPlan.ASSUMED_DIAMETER_UNCERTAINTY_MM,
            NumberRange.NOT_NEGATIVE),
        json.numberOrNull("cutFromMm", NumberRange.NOT_NEGATIVE),
        ferrule(json),
        SpliceReader.readFrom(json, lengthMm, taper.depthAt(lengthMm)),
        weights(json),
        extras(json));
  }

  static Taper taper(JsonObject json) throws BadDocumentException {
    double lengthMm = json.number("lengthMm", NumberRange.ABOVE_ZERO);
    List<Station> knots = new ArrayList<>();
    for (JsonObject knot : json.objects("taper", "xMm", "diameterMm")) {
      knots.add(
          Station.round(
              knot.number("xMm", NumberRange.NOT_NEGATIVE),
              knot.number("diameterMm", NumberRange.ABOVE_ZERO)));
    }
    Optional<FinishProblem> problem = FinishCheck.problemOfKnots(knots, lengthMm);
    if (problem.isPresent()) {
      throw new BadDocumentException(problem.get().key(), problem.get().whatIsWrong());
    }
    return Taper.round(knots, lengthMm);
  }

  private static Ferrule ferrule(JsonObject finish) throws BadDocumentException {
    if (!finish.has("ferrule")) {
      return null;
    }
    JsonObject json = finish.object("ferrule", "lengthMm", "boreMm", "densityKgM3");
    return new Ferrule(
        json.number("lengthMm", NumberRange.NOT_NEGATIVE),
        json.number("boreMm", NumberRange.NOT_NEGATIVE),
        json.number("densityKgM3", NumberRange.NOT_NEGATIVE));
  }

  private static List<Weight> weights(JsonObject finish) throws BadDocumentException {
    List<Weight> weights = new ArrayList<>();
    if (finish.has("weights")) {
      for (JsonObject json :
          finish.objects("weights", "fromMm", "toMm", "diameterMm", "densityKgM3")) {
        weights.add(
            new Weight(
                json.number("fromMm", NumberRange.ANY),
                json.number("toMm", NumberRange.ANY),
                json.number("diameterMm", NumberRange.ABOVE_ZERO),
                json.number("densityKgM3", NumberRange.NOT_NEGATIVE)));
      }
    }
    return weights;
  }

  private static List<Extra> extras(JsonObject finish) throws BadDocumentException {
    List<Extra> extras = new ArrayList<>();
    if (finish.has("extras")) {
      for (JsonObject json : finish.objects("extras", "name", "xMm", "massG")) {
        extras.add(
            new Extra(
                json.textOrNull("name"),
                json.number("xMm", NumberRange.ANY),
                json.number("massG", NumberRange.NOT_NEGATIVE)));
      }
    }
    return extras;
  }
}
