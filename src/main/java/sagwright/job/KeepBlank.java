package sagwright.job;

import java.util.List;
import java.util.Optional;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Enters a blank as it was written down, or newer measurements of one. */
public final class KeepBlank {
  private final Workshop workshop;
  private final SheetReader reader;
  private final GradeAgain gradeAgain;

  public KeepBlank(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /**
   * A blank as somebody measured it.
   *
   * @param species null where unknown, as the next
   * @param stage null where not said
   * @param lengthMm null: the last station
   * @param massG null where not weighed
   * @param moisturePercent null where not measured
   * @param grain as it looked; {@link Grain#UNSEEN} adds nothing to the record
   */
  public record Measured(
      String tag,
      String species,
      String stage,
      SectionShape section,
      Double lengthMm,
      Double massG,
      Double moisturePercent,
      List<Calipers> stations,
      Grain grain) {}

  /** A place where the calipers were put; a width of null was not measured. */
  public record Calipers(double xMm, double depthMm, Double widthMm) {
    /** The same with the width that is reckoned with. */
    public Station station() {
      return new Station(xMm, depthMm, widthMm == null ? depthMm : widthMm);
    }
  }

  /**
   * A new blank.
   *
   * @throws WorkshopException also where something of it cannot be: the line says what
   */
  public Blank enter(Measured blank) throws WorkshopException {
    JsonLine nothing =
        new JsonLine().put("format", SheetReader.FORMAT).put("shaft", new JsonLine());
    return workshop.blanks().enter(sheet(nothing, blank), blank.grain());
  }

  /**
   * Newer measurements of a blank that is there; the older ones stay on its record. What the form
   * does not ask for is carried on: bow, caliper uncertainty, splice, keys that begin with x-.
   *
   * @param why in words: turned, weighed, what was misread
   */
  public void measure(Measured blank, String why) throws WorkshopException {
    if (why.isBlank()) {
      throw new WorkshopException("say why: turned, weighed, what was misread");
    }
    Blank known = workshop.blanks().require(blank.tag());
    JsonLine newest = JsonLine.parse(workshop.blanks().caliperNow(known).document());
    boolean isNewGrain =
        !blank.grain().isUnseen()
            && !workshop.grains().now(known).equals(Optional.of(blank.grain()));
    workshop
        .blanks()
        .addCaliperEntry(
            known, sheet(newest, blank), isNewGrain ? blank.grain() : Grain.UNSEEN, why.trim());
    gradeAgain.of(known);
  }

  /**
   * Read by the same reader as every other sheet, so that the same rules hold.
   *
   * @param onto what is known already; it is changed
   */
  private Sheet sheet(JsonLine onto, Measured blank) throws WorkshopException {
    JsonLine shaft = onto.object("shaft").put("tag", blank.tag());
    putText(shaft, "species", blank.species());
    putText(shaft, "stage", blank.stage());
    shaft.put("section", blank.section() == SectionShape.RECTANGLE ? "rectangle" : "ellipse");
    putNumber(shaft, "lengthMm", blank.lengthMm());
    putNumber(shaft, "massG", blank.massG());
    putNumber(shaft, "moisturePercent", blank.moisturePercent());
    List<JsonLine> before = shaft.objects("stations");
    shaft.putObjects("stations", blank.stations().stream().map(c -> station(before, c)).toList());
    try {
      return reader.read(onto.toString()).requireTag();
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage().replaceFirst("^shaft\\.", ""));
    }
  }

  private static JsonLine station(List<JsonLine> before, Calipers c) {
    JsonLine json =
        before.stream()
            .filter(known -> Double.valueOf(c.xMm()).equals(known.number("xMm")))
            .findFirst()
            .orElseGet(JsonLine::new)
            .put("xMm", c.xMm())
            .put("depthMm", c.depthMm());
    putNumber(json, "widthMm", c.widthMm());
    return json;
  }

  private static void putText(JsonLine json, String key, String text) {
    if (text == null) {
      json.without(key);
    } else {
      json.put(key, text);
    }
  }

  private static void putNumber(JsonLine json, String key, Double number) {
    if (number == null) {
      json.without(key);
    } else {
      json.put(key, number);
    }
  }
}
