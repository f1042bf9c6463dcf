package sagwright.sheet;

import sagwright.run.HandReadings;
import sagwright.run.Readings;
import sagwright.run.Samples;

/** The {@code run} or the {@code handRead} of a sheet. */
final class ReadingsReader {
  private ReadingsReader() {}

  /** Null where the sheet has neither. */
  static Readings readFrom(JsonObject sheet) throws BadDocumentException {
    if (sheet.has("run") && sheet.has("handRead")) {
      throw sheet.bad("handRead", "stands beside run; a sheet has one of the two");
    }
    if (sheet.has("run")) {
      return samples(run(sheet));
    }
    return sheet.has("handRead") ? pairs(sheet) : null;
  }

  /** As written; null where there is no run or it says nothing. */
  static String startedAt(JsonObject sheet) throws BadDocumentException {
    if (!sheet.has("run")) {
      return null;
    }
    JsonObject run = run(sheet);
    String startedAt = run.textOrNull("startedAt");
    if (startedAt != null && !Moments.isMoment(startedAt)) {
      throw run.bad("startedAt", "is " + run.shown("startedAt") + ", must be a date and time");
    }
    return startedAt;
  }

  private static JsonObject run(JsonObject sheet) throws BadDocumentException {
    return sheet.object("run", "startedAt", "timeS", "loadN", "deflectionMm");
  }

  private static Samples samples(JsonObject run) throws BadDocumentException {
    double[] timeS = run.numbers("timeS");
    double[] loadN = run.numbers("loadN");
    double[] deflectionMm = run.numbers("deflectionMm");
    if (loadN.length != timeS.length && deflectionMm.length != loadN.length) {
      // the load is the odd one out, or all three differ
      throw unlike(run, "loadN", loadN.length, "timeS", timeS.length);
    }
    if (deflectionMm.length != timeS.length) {
      throw loadN.length == deflectionMm.length
          ? unlike(run, "timeS", timeS.length, "loadN", loadN.length)
          : unlike(run, "deflectionMm", deflectionMm.length, "timeS", timeS.length);
    }
    for (int i = 1; i < timeS.length; i++) {
      if (timeS[i] < timeS[i - 1]) {
        throw run.bad(
            "timeS[" + i + "]", "is " + timeS[i] + ", below the " + timeS[i - 1] + " before it");
      }
    }
    return new Samples(timeS, loadN, deflectionMm);
  }

  private static HandReadings pairs(JsonObject sheet) throws BadDocumentException {
    JsonObject handRead = sheet.object("handRead", "loadN", "deflectionMm");
    double[] loadN = handRead.numbers("loadN");
    double[] deflectionMm = handRead.numbers("deflectionMm");
    if (loadN.length != deflectionMm.length) {
      throw unlike(handRead, "deflectionMm", deflectionMm.length, "loadN", loadN.length);
    }
    return new HandReadings(loadN, deflectionMm);
  }

  private static BadDocumentException unlike(
      JsonObject json, String odd, int oddCount, String other, int otherCount) {
    return json.bad(odd, "has " + oddCount + " values, " + json.path(other) + " has " + otherCount);
  }
}
