package sagwright.job;

import java.util.List;
import sagwright.beam.SectionShape;
import sagwright.beam.Station;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Enters a blank as it was written down, or newer measurements of one. */
public final class KeepBlank {
  private final Workshop workshop;
  private final SheetReader reader;

  public KeepBlank(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
  }

  /**
   * A blank as somebody measured it.
   *
   * @param species null where unknown, as the next
   * @param stage null where not said
   * @param lengthMm null: the last station
   * @param massG null where not weighed
   * @param moisturePercent null where not measured
   */
  public record Measured(
      String tag,
      String species,
      String stage,
      SectionShape section,
      Double lengthMm,
      Double massG,
      Double moisturePercent,
      List<Calipers> stations) {}

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
    return workshop.blanks().enter(sheet(blank));
  }

  /** Newer measurements of a blank that is there; the older ones stay on its record. */
  public void measure(Measured blank, String why) throws WorkshopException {
    Blank known = workshop.blanks().require(blank.tag());
    Sheet sheet = sheet(blank);
    workshop.blanks().addCaliperEntry(known, sheet, why);
    String stage = workshop.blanks().state(known).stage();
    if (sheet.stage() != null && !sheet.stage().equals(stage)) {
      workshop.blanks().setStage(known, sheet.stage());
    }
  }

  /** Read by the same reader as every other sheet, so that the same rules hold. */
  private Sheet sheet(Measured blank) throws WorkshopException {
    JsonLine shaft = new JsonLine().put("tag", blank.tag());
    putText(shaft, "species", blank.species());
    putText(shaft, "stage", blank.stage());
    shaft.put("section", blank.section() == SectionShape.RECTANGLE ? "rectangle" : "ellipse");
    putNumber(shaft, "lengthMm", blank.lengthMm());
    putNumber(shaft, "massG", blank.massG());
    putNumber(shaft, "moisturePercent", blank.moisturePercent());
    shaft.putObjects("stations", blank.stations().stream().map(KeepBlank::station).toList());
    String document =
        new JsonLine().put("format", SheetReader.FORMAT).put("shaft", shaft).toString();
    try {
      return reader.read(document).requireTag();
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage().replaceFirst("^shaft\\.", ""));
    }
  }

  private static JsonLine station(Calipers c) {
    JsonLine json = new JsonLine().put("xMm", c.xMm()).put("depthMm", c.depthMm());
    putNumber(json, "widthMm", c.widthMm());
    return json;
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
