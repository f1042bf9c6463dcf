package sagwright.job;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import sagwright.beam.Flexibility;
import sagwright.beam.SectionShape;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;
import sagwright.beam.Station;
import sagwright.beam.Taper;

/** Sheets and orders of an invented rack; each run is hand-read and free of error. */
public final class InventedBlanks {
  private static final double FRAME_MM_PER_N = 0.002;

  private InventedBlanks() {}

  /** A blank of a rack. */
  public record Spec(String tag, double modulusMPa, double buttMm, String species, String stage) {
    public static Spec ash(String tag, double modulusMPa) {
      return new Spec(tag, modulusMPa, 31, "European ash", "near size");
    }

    public Spec withButt(double mm) {
      return new Spec(tag, modulusMPa, mm, species, stage);
    }

    public Spec of(String otherSpecies) {
      return new Spec(tag, modulusMPa, buttMm, otherSpecies, stage);
    }

    public Spec at(String otherStage) {
      return new Spec(tag, modulusMPa, buttMm, species, otherStage);
    }
  }

  /** Tested at the usual set-up. */
  public static String sheet(Spec spec) {
    return sheet(spec, new SetUp(100, 1100, 600, 600, 0));
  }

  public static String sheet(Spec spec, SetUp setUp) {
    double perN = Flexibility.of(taper(spec), setUp).perMm(14) / spec.modulusMPa() + FRAME_MM_PER_N;
    return sheet(shaft(spec, null), setUp, perN);
  }

  private static String sheet(String shaft, SetUp setUp, double perN) {
    double[] loads = {0, 2, 4, 6, 8, 10, 12, 14, 16};
    return String.format(
        Locale.ROOT,
        "{\"format\":\"sagwright-sheet/1\",%s,\"setup\":{\"supportAMm\":%s,\"supportBMm\":%s,"
            + "\"loadMm\":%s,\"gaugeMm\":%s,\"frameComplianceMmPerN\":%s},"
            + "\"handRead\":{\"loadN\":[%s],\"deflectionMm\":[%s]}}",
        shaft,
        setUp.supportAMm(),
        setUp.supportBMm(),
        setUp.loadMm(),
        setUp.gaugeMm(),
        FRAME_MM_PER_N,
        joined(DoubleStream.of(loads)),
        joined(DoubleStream.of(loads).map(load -> load * perN)));
  }

  /** Of a shaft that is spliced already; its run is made by the spliced beam. */
  public static String sheet(Spec spec, Splice splice, SetUp setUp) {
    double perN = splicedMmPerN(spec, splice, setUp) + FRAME_MM_PER_N;
    return sheet(shaft(spec, splice), setUp, perN);
  }

  /** How far a spliced shaft bends per newton. */
  public static double splicedMmPerN(Spec spec, Splice splice, SetUp setUp) {
    return SplicedFlexibility.of(new SplicedTaper(taper(spec), splice), setUp)
        .mmPerN(spec.modulusMPa(), 14);
  }

  public static String untested(Spec spec) {
    return "{\"format\":\"sagwright-sheet/1\"," + shaft(spec, null) + "}";
  }

  /** Its run has three loads that are all alike, and gives no answer. */
  public static String poor(Spec spec) {
    return "{\"format\":\"sagwright-sheet/1\","
        + shaft(spec, null)
        + ",\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,\"gaugeMm\":600},"
        + "\"handRead\":{\"loadN\":[5,5,5],\"deflectionMm\":[1,1,1]}}";
  }

  /**
   * @param splice null for none
   */
  private static String shaft(Spec spec, Splice splice) {
    return String.format(
        Locale.ROOT,
        "\"shaft\":{\"tag\":\"%s\",\"species\":\"%s\",\"stage\":\"%s\",\"massG\":405,%s\"stations\":[%s]},"
            + "\"modulusToShearRatio\":14",
        spec.tag(),
        spec.species(),
        spec.stage(),
        splice == null
            ? ""
            : String.format(
                Locale.ROOT,
                "\"splice\":{\"fromMm\":%s,\"coreHalfAtButtMm\":%s,\"densityKgM3\":%s,"
                    + "\"modulusMPa\":%s},",
                splice.fromMm(),
                splice.coreHalfAtButtMm(),
                splice.densityKgM3(),
                splice.modulusMPa()),
        taper(spec).stations().stream()
            .map(
                s ->
                    String.format(Locale.ROOT, "{\"xMm\":%s,\"depthMm\":%s}", s.xMm(), s.depthMm()))
            .collect(Collectors.joining(",")));
  }

  private static Taper taper(Spec spec) {
    return new Taper(
        SectionShape.ELLIPSE,
        List.of(Station.round(0, 12.5), Station.round(700, 22), Station.round(1490, spec.buttMm())),
        1490);
  }

  /** What the shaft of a blank shows at a set-up as it is. */
  public static double stiffnessNPerMm(Spec spec, SetUp setUp) {
    return spec.modulusMPa() / Flexibility.of(taper(spec), setUp).perMm(14);
  }

  /** Of European ash. */
  public static String order(String number, double stiffnessNPerMm, double tolerancePercent) {
    return String.format(
        Locale.ROOT,
        "{\"format\":\"sagwright-order/1\",\"order\":\"%s\",\"species\":\"European ash\","
            + "\"finish\":{\"lengthMm\":1473,"
            + "\"taper\":[{\"xMm\":0,\"diameterMm\":9.5},{\"xMm\":1473,\"diameterMm\":29}]},"
            + "\"ask\":{\"setup\":{\"supportAMm\":100,\"supportBMm\":1100,\"loadMm\":600,"
            + "\"gaugeMm\":600},\"stiffnessNPerMm\":%s,\"tolerancePercent\":%s}}",
        number,
        stiffnessNPerMm,
        tolerancePercent);
  }

  /** What a blank of a modulus shows at the usual set-up when it is finished to such an order. */
  public static double finishedStiffnessNPerMm(double modulusMPa) {
    Taper finished = Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473);
    return modulusMPa / Flexibility.of(finished, new SetUp(100, 1100, 600, 600, 0)).perMm(14);
  }

  private static String joined(DoubleStream numbers) {
    return numbers.mapToObj(Double::toString).collect(Collectors.joining(","));
  }
}
