package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.modulus.Shaft;

/** The {@code shaft} object of a sheet. */
final class ShaftReader {
  private final JsonObject json;
  private final Assumptions assumptions;

  ShaftReader(JsonNode node, Assumptions assumptions) throws BadDocumentException {
    this.assumptions = assumptions;
    json =
        new JsonObject(
            node,
            "shaft",
            "tag",
            "species",
            "stage",
            "section",
            "lengthMm",
            "massG",
            "moisturePercent",
            "diameterUncertaintyMm",
            "diameterCommonShare",
            "bowMm",
            "stations",
            "splice");
  }

  String tag() throws BadDocumentException {
    return json.textOrNull("tag");
  }

  String stage() throws BadDocumentException {
    return json.textOrNull("stage");
  }

  Double bowMm() throws BadDocumentException {
    return json.numberOrNull("bowMm", NumberRange.NOT_NEGATIVE);
  }

  Shaft read() throws BadDocumentException {
    SectionShape shape = section();
    List<JsonObject> entries = json.objects("stations", "xMm", "depthMm", "widthMm");
    if (entries.size() < 2) {
      throw json.bad("stations", "has " + entries.size() + ", must have two or more");
    }
    List<Station> stations = stations(entries);
    double lastXMm = stations.get(stations.size() - 1).xMm();
    Double givenMm = json.numberOrNull("lengthMm", NumberRange.ABOVE_ZERO);
    double lengthMm = givenMm == null ? lastXMm : givenMm;
    for (int i = 0; i < entries.size(); i++) {
      double xMm = stations.get(i).xMm();
      if (xMm > lengthMm) {
        throw entries
            .get(i)
            .bad("xMm", "is " + xMm + ", beyond " + json.path("lengthMm") + ", " + lengthMm);
      }
    }
    requireDiametersToTheEnds(entries, stations, lengthMm);
    Taper taper = new Taper(shape, stations, lengthMm);
    boolean[] widthMeasured = new boolean[entries.size()];
    for (int i = 0; i < widthMeasured.length; i++) {
      widthMeasured[i] = entries.get(i).has("widthMm");
    }
    return new Shaft(
        taper,
        widthMeasured,
        json.textOrNull("species"),
        json.numberOrNull("massG", NumberRange.NOT_NEGATIVE),
        json.numberOrNull("moisturePercent", NumberRange.MOISTURE),
        assumptions.orAssume(json, "diameterUncertaintyMm", Shaft.ASSUMED_DIAMETER_UNCERTAINTY_MM),
        json.numberOr(
            "diameterCommonShare", Shaft.ASSUMED_DIAMETER_COMMON_SHARE, NumberRange.SHARE),
        SpliceReader.readFrom(
            json, lengthMm, (taper.depthAt(lengthMm) + taper.widthAt(lengthMm)) / 2));
  }

  private SectionShape section() throws BadDocumentException {
    String section = json.textOrNull("section");
    if (section == null || section.equals("ellipse")) {
      return SectionShape.ELLIPSE;
    }
    if (section.equals("rectangle")) {
      return SectionShape.RECTANGLE;
    }
    throw json.bad("section", "is " + json.shown("section") + ", must be ellipse or rectangle");
  }

  private static List<Station> stations(List<JsonObject> entries) throws BadDocumentException {
    List<Station> stations = new ArrayList<>(entries.size());
    JsonObject before = null;
    for (JsonObject entry : entries) {
      double xMm = entry.number("xMm", NumberRange.NOT_NEGATIVE);
      if (before != null) {
        double beforeMm = stations.get(stations.size() - 1).xMm();
        if (xMm <= beforeMm) {
          throw entry.bad(
              "xMm", "is " + xMm + ", not beyond " + before.path("xMm") + ", " + beforeMm);
        }
      }
      double depthMm = entry.number("depthMm", NumberRange.ABOVE_ZERO);
      stations.add(
          new Station(xMm, depthMm, entry.numberOr("widthMm", depthMm, NumberRange.ABOVE_ZERO)));
      before = entry;
    }
    return stations;
  }

  private static void requireDiametersToTheEnds(
      List<JsonObject> entries, List<Station> stations, double lengthMm)
      throws BadDocumentException {
    double endMm = Taper.endThatRunsOut(stations, lengthMm);
    if (Double.isNaN(endMm)) {
      return;
    }
    int last = stations.size() - 1;
    int at = endMm == 0 ? 0 : last;
    Station near = stations.get(at);
    Station far = stations.get(at == 0 ? 1 : last - 1);
    double t = (endMm - near.xMm()) / (far.xMm() - near.xMm());
    boolean depthRunsOut = !(near.depthMm() + t * (far.depthMm() - near.depthMm()) > 0);
    throw entries
        .get(at)
        .bad(
            depthRunsOut ? "depthMm" : "widthMm",
            "carried straight on runs out to 0 before the end at " + endMm);
  }
}
