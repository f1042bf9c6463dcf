package sagwright.sheet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.HandReadings;
import sagwright.run.Readings;
import sagwright.run.Samples;

/**
 * A sheet as read: one shaft, and where it has them a set-up and a run.
 *
 * @param tag null where left out
 * @param stage null where left out
 * @param bowMm null where left out
 * @param setUp null for a blank not tested yet
 * @param readings null for a blank not tested yet
 * @param startedAt as written, null where left out
 * @param assumed the keys whose defaults were taken (docs/contract.md, section 3)
 * @param json the whole document as it came, on one line, keys that begin with x- included
 */
public record Sheet(
    String tag,
    String stage,
    Double bowMm,
    Shaft shaft,
    BenchSetUp setUp,
    ShearRatio ratio,
    Instrument instrument,
    Readings readings,
    String startedAt,
    List<String> assumed,
    String json)
    implements Document {
  public Sheet {
    assumed = List.copyOf(assumed);
  }

  public boolean hasRun() {
    return readings != null;
  }

  /** This sheet, where it can be worked out; else the complaint names what it lacks. */
  public Sheet requireRun() throws BadDocumentException {
    if (setUp == null) {
      throw new BadDocumentException("setup", "is missing");
    }
    if (!hasRun()) {
      throw new BadDocumentException("run", "is missing, and so is handRead");
    }
    return this;
  }

  /** This sheet, where it may enter a workshop: with a tag of the right kind. */
  public Sheet requireTag() throws BadDocumentException {
    if (tag == null) {
      throw new BadDocumentException("shaft.tag", "is missing");
    }
    Names.require("shaft.tag", tag);
    return this;
  }

  /**
   * The same sheet with a recorded run.
   *
   * @param startedAt ISO 8601
   */
  public Sheet withRun(Samples run, String startedAt) {
    JsonLine document = JsonLine.parse(json).without("run", "handRead");
    document.put("run", SheetWriter.runLine(run, startedAt));
    return with(run, startedAt, document.toString());
  }

  /** The same sheet with a run that was read by hand. */
  public Sheet withHandRead(HandReadings pairs) {
    JsonLine document = JsonLine.parse(json).without("run", "handRead");
    document.put("handRead", SheetWriter.handReadLine(pairs));
    return with(pairs, null, document.toString());
  }

  private Sheet with(Readings read, String at, String document) {
    return new Sheet(
        tag, stage, bowMm, shaft, setUp, ratio, instrument, read, at, assumed, document);
  }

  /**
   * The same shaft with its bow; the side it lies on is noted beside.
   *
   * @param sideDegrees the turn at which the belly points the way the load pushes
   */
  public Sheet withBow(double sizeMm, double sideDegrees) {
    JsonLine document = JsonLine.parse(json);
    document.object("shaft").put("bowMm", sizeMm).put("x-bowSideDegrees", sideDegrees);
    return new Sheet(
        tag,
        stage,
        sizeMm,
        shaft,
        setUp,
        ratio,
        instrument,
        readings,
        startedAt,
        assumed,
        document.toString());
  }

  /** This sheet's text under another tag. */
  public String jsonUnderTag(String other) {
    if (other.equals(tag)) {
      return json;
    }
    JsonLine document = JsonLine.parse(json);
    document.object("shaft").put("tag", other);
    return document.toString();
  }

  /**
   * This sheet's text with another sheet's shaft in the place of its own: how it lay on the bench
   * and what was read there stay.
   */
  public String jsonOnShaftOf(Sheet other) {
    JsonLine mine = JsonLine.parse(json);
    JsonLine document = JsonLine.parse(other.shaftDocument());
    for (String key : List.of("setup", "instrument", "run", "handRead")) {
      JsonLine part = mine.objectOrNull(key);
      if (part != null) {
        document.put(key, part);
      }
    }
    return document.toString();
  }

  /**
   * The shaft alone as a sheet of its own, with the ratio of its wood's moduli, on one line, keys
   * that begin with x- included.
   */
  public String shaftDocument() {
    return JsonLine.parse(json)
        .keep("format", "shaft", "modulusToShearRatio", "modulusToShearRatioUncertainty")
        .toString();
  }

  /** This sheet without its readings, as it stood before the run, on one line. */
  public String documentWithoutReadings() {
    return JsonLine.parse(json).without("run", "handRead").toString();
  }

  /**
   * Whether both have the same shaft, whatever their tags; keys that begin with x- do not count.
   */
  public boolean hasSameShaftAs(Sheet other) {
    return SheetWriter.writeShaft(this).equals(SheetWriter.writeShaft(other));
  }

  /** When the run started; a time without a zone is taken as UTC's. Empty where it is not said. */
  public Optional<Instant> startedInstant() {
    return startedAt == null ? Optional.empty() : Optional.of(Moments.instantOf(startedAt));
  }

  /** The problem to be worked out; only for a sheet that has a run. */
  public BendTest bendTest() {
    if (!hasRun()) {
      throw new IllegalStateException("this sheet has no run");
    }
    return new BendTest(shaft, setUp, instrument, ratio, readings);
  }
}
