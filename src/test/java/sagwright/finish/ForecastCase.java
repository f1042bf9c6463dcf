package sagwright.finish;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.ModulusAlong;
import sagwright.uncertainty.Estimate;

/** One case of forecast_reference.json: a blank, a plan, set-ups, and what must come out. */
record ForecastCase(
    String name, BlankWood blank, FinishPlan plan, List<SetUp> setUps, JsonNode expected) {
  static List<ForecastCase> all() {
    try {
      JsonNode cases =
          new ObjectMapper()
              .readTree(ForecastCase.class.getResourceAsStream("forecast_reference.json"));
      return StreamSupport.stream(cases.spliterator(), false).map(ForecastCase::of).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Forecast forecast() {
    return Forecaster.forecast(new ForecastRequest(blank, plan, setUps, 2.25));
  }

  @Override
  public String toString() {
    return name;
  }

  private static ForecastCase of(JsonNode node) {
    JsonNode shaft = node.get("shaft");
    List<Station> stations = new ArrayList<>();
    for (JsonNode s : shaft.get("stations")) {
      double depth = s.get("depthMm").asDouble();
      double width = s.has("widthMm") ? s.get("widthMm").asDouble() : depth;
      stations.add(new Station(s.get("xMm").asDouble(), depth, width));
    }
    BlankWood blank =
        BlankWood.ofOneWood(
            new Taper(SectionShape.ELLIPSE, stations, shaft.get("lengthMm").asDouble()),
            shaft.get("massG").asDouble(),
            ModulusAlong.constant(
                new Estimate(
                    node.get("modulusMPa").asDouble(),
                    node.get("modulusUncertaintyMPa").asDouble())),
            node.get("modulusToShearRatio").asDouble());
    JsonNode order = node.get("order");
    List<SetUp> setUps = new ArrayList<>(List.of(setUp(order.get("ask"))));
    order.get("alsoAsked").forEach(ask -> setUps.add(setUp(ask)));
    return new ForecastCase(
        node.get("name").asText(), blank, plan(order.get("finish")), setUps, node.get("expected"));
  }

  private static SetUp setUp(JsonNode ask) {
    JsonNode s = ask.get("setup");
    return new SetUp(
        s.get("supportAMm").asDouble(),
        s.get("supportBMm").asDouble(),
        s.get("loadMm").asDouble(),
        s.get("gaugeMm").asDouble(),
        0);
  }

  private static FinishPlan plan(JsonNode finish) {
    List<Station> knots = new ArrayList<>();
    for (JsonNode k : finish.get("taper")) {
      knots.add(Station.round(k.get("xMm").asDouble(), k.get("diameterMm").asDouble()));
    }
    List<Weight> weights = new ArrayList<>();
    for (JsonNode w : finish.path("weights")) {
      weights.add(
          new Weight(
              w.get("fromMm").asDouble(),
              w.get("toMm").asDouble(),
              w.get("diameterMm").asDouble(),
              w.get("densityKgM3").asDouble()));
    }
    List<Extra> extras = new ArrayList<>();
    for (JsonNode e : finish.path("extras")) {
      extras.add(
          new Extra(e.get("name").asText(), e.get("xMm").asDouble(), e.get("massG").asDouble()));
    }
    JsonNode f = finish.get("ferrule");
    JsonNode s = finish.get("splice");
    return new FinishPlan(
        Taper.round(knots, finish.get("lengthMm").asDouble()),
        finish.path("diameterUncertaintyMm").asDouble(0.05),
        finish.has("cutFromMm") ? finish.get("cutFromMm").asDouble() : null,
        f == null
            ? null
            : new Ferrule(
                f.get("lengthMm").asDouble(),
                f.get("boreMm").asDouble(),
                f.get("densityKgM3").asDouble()),
        s == null
            ? null
            : new Splice(
                s.get("fromMm").asDouble(),
                s.get("coreHalfAtButtMm").asDouble(),
                s.get("densityKgM3").asDouble(),
                s.get("modulusMPa").asDouble(),
                s.get("modulusUncertaintyPercent").asDouble()),
        weights,
        extras);
  }
}
