package sagwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.run.Samples;

/**
 * Writes sheets so that {@link SheetReader} reads the same back, to the last digit: every value
 * that was assumed is left out, so that it is listed as assumed again.
 */
public final class SheetWriter {
  private SheetWriter() {}

  /**
   * The sheet's text on one line, made from its values; its {@code json} plays no part and may be
   * null.
   */
  public static String write(Sheet sheet) {
    JsonLine json = new JsonLine().put("format", SheetReader.FORMAT);
    json.put("shaft", shaftLine(sheet));
    List<String> assumed = sheet.assumed();
    if (sheet.setUp() != null) {
      json.put("setup", setUpLine(sheet.setUp(), assumed));
    }
    ShearRatio ratio = sheet.ratio();
    putUnlessAssumed(json, assumed, "modulusToShearRatio", ratio.value());
    json.put("modulusToShearRatioUncertainty", ratio.standardUncertainty());
    json.put("instrument", instrumentLine(sheet.instrument(), assumed));
    if (sheet.readings() instanceof Samples samples) {
      json.put("run", runLine(samples, sheet.startedAt()));
    } else if (sheet.readings() instanceof HandReadings pairs) {
      json.put("handRead", handReadLine(pairs));
    }
    return json.toString();
  }

  /** The {@code shaft} object alone, without its tag: equal shafts are written alike. */
  static String writeShaft(Sheet sheet) {
    return shaftLine(sheet).without("tag").toString();
  }

  /**
   * @param startedAt null where it is not known
   */
  static JsonLine runLine(Samples samples, String startedAt) {
    JsonLine run = new JsonLine();
    putText(run, "startedAt", startedAt);
    return run.putNumbers("timeS", samples.timeS())
        .putNumbers("loadN", samples.loadN())
        .putNumbers("deflectionMm", samples.deflectionMm());
  }

  static JsonLine handReadLine(HandReadings pairs) {
    return new JsonLine()
        .putNumbers("loadN", pairs.loadN())
        .putNumbers("deflectionMm", pairs.deflectionMm());
  }

  static JsonLine spliceLine(Splice splice) {
    return new JsonLine()
        .put("fromMm", splice.fromMm())
        .put("coreHalfAtButtMm", splice.coreHalfAtButtMm())
        .put("densityKgM3", splice.densityKgM3())
        .put("modulusMPa", splice.modulusMPa())
        .put("modulusUncertaintyPercent", splice.modulusUncertaintyPercent());
  }

  private static JsonLine shaftLine(Sheet sheet) {
    JsonLine json = new JsonLine();
    Shaft shaft = sheet.shaft();
    putText(json, "tag", sheet.tag());
    putText(json, "species", shaft.species());
    putText(json, "stage", sheet.stage());
    json.put("section", shaft.taper().shape().name().toLowerCase(Locale.ROOT));
    json.put("lengthMm", shaft.taper().lengthMm());
    putNumber(json, "massG", shaft.massG());
    putNumber(json, "moisturePercent", shaft.moisturePercent());
    putUnlessAssumed(json, sheet.assumed(), "diameterUncertaintyMm", shaft.diameterUncertaintyMm());
    json.put("diameterCommonShare", shaft.diameterCommonShare());
    putNumber(json, "bowMm", sheet.bowMm());
    List<JsonLine> stations = new ArrayList<>();
    for (int i = 0; i < shaft.taper().stationCount(); i++) {
      Station station = shaft.taper().station(i);
      JsonLine entry = new JsonLine().put("xMm", station.xMm()).put("depthMm", station.depthMm());
      if (shaft.widthMeasured()[i]) {
        entry.put("widthMm", station.widthMm());
      }
      stations.add(entry);
    }
    json.putObjects("stations", stations);
    Splice splice = shaft.splice();
    if (splice != null) {
      json.put("splice", spliceLine(splice));
    }
    return json;
  }

  /**
   * @param assumed keys that are left out
   */
  static JsonLine setUpLine(BenchSetUp setUp, List<String> assumed) {
    SetUp positions = setUp.positions();
    JsonLine json =
        new JsonLine()
            .put("supportAMm", positions.supportAMm())
            .put("supportBMm", positions.supportBMm())
            .put("loadMm", positions.loadMm())
            .put("gaugeMm", positions.gaugeMm())
            .put("turnDegrees", positions.turnDegrees());
    putUnlessAssumed(json, assumed, "positionUncertaintyMm", setUp.positionUncertaintyMm());
    putUnlessAssumed(json, assumed, "frameComplianceMmPerN", setUp.frameComplianceMmPerN());
    return json.put("frameComplianceUncertaintyMmPerN", setUp.frameComplianceUncertaintyMmPerN());
  }

  private static JsonLine instrumentLine(Instrument instrument, List<String> assumed) {
    JsonLine json = new JsonLine();
    putUnlessAssumed(json, assumed, "loadUncertaintyN", instrument.loadUncertaintyN());
    putUnlessAssumed(
        json, assumed, "loadScaleUncertaintyPercent", instrument.loadScaleUncertaintyPercent());
    putUnlessAssumed(json, assumed, "gaugeUncertaintyMm", instrument.gaugeUncertaintyMm());
    putUnlessAssumed(
        json, assumed, "gaugeScaleUncertaintyPercent", instrument.gaugeScaleUncertaintyPercent());
    return json.put("gaugeSpringNPerMm", instrument.gaugeSpringNPerMm());
  }

  private static void putUnlessAssumed(
      JsonLine json, List<String> assumed, String key, double value) {
    if (!assumed.contains(key)) {
      json.put(key, value);
    }
  }

  private static void putText(JsonLine json, String key, String text) {
    if (text != null) {
      json.put(key, text);
    }
  }

  private static void putNumber(JsonLine json, String key, Double number) {
    if (number != null) {
      json.put(key, number);
    }
  }
}
