package sagwright.job;

import java.util.List;
import sagwright.beam.Station;
import sagwright.sheet.JsonLine;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.Run;

/** Figures out of the answers that a record keeps. */
public final class RecordFigures {
  private RecordFigures() {}

  /** The shaft's own stiffness in N/mm; only for a run that gave an answer. */
  public static Estimate stiffness(Run run) {
    JsonLine answer = JsonLine.parse(run.outcome().answer());
    return new Estimate(
        answer.number("shaftStiffnessNPerMm"), answer.number("stiffnessStdUncertaintyNPerMm"));
  }

  /** The modulus in MPa; only for a run that gave an answer. */
  public static Estimate modulusMPa(Run run) {
    JsonLine answer = JsonLine.parse(run.outcome().answer());
    return new Estimate(answer.number("modulusMPa"), answer.number("modulusStdUncertaintyMPa"));
  }

  /**
   * What a caliper entry says in figures.
   *
   * @param massG null where it was not weighed
   * @param bowMm null where not measured
   */
  public record Measured(Double massG, Double bowMm, List<Station> stations) {
    public Measured {
      stations = List.copyOf(stations);
    }
  }

  public static Measured of(CaliperEntry entry) {
    JsonLine shaft = JsonLine.parse(entry.document()).object("shaft");
    return new Measured(
        shaft.number("massG"),
        shaft.number("bowMm"),
        shaft.objects("stations").stream().map(RecordFigures::station).toList());
  }

  private static Station station(JsonLine station) {
    double depthMm = station.number("depthMm");
    Double widthMm = station.number("widthMm");
    return new Station(station.number("xMm"), depthMm, widthMm == null ? depthMm : widthMm);
  }

  /** A grade's word and the chance behind it. */
  public record Graded(String word, double chance) {}

  public static Graded of(Grade grade) {
    JsonLine answer = JsonLine.parse(grade.answer());
    return new Graded(answer.text("grade"), answer.number("chanceWithinTolerance"));
  }
}
