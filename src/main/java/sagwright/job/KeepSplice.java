package sagwright.job;

import java.util.Optional;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.SheetReader;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Says of a shaft on the rack that it is spliced already, as a visitor's cue is. */
public final class KeepSplice {
  private final Workshop workshop;
  private final SpeciesTable species;
  private final SheetReader reader;
  private final GradeAgain gradeAgain;

  public KeepSplice(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.species = species;
    this.reader = new SheetReader(species);
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /**
   * A splice as somebody measured it.
   *
   * @param fromButtMm how far its points lie from the butt end
   * @param coreHalfAtButtMm half the core's side at the butt end
   * @param wood a wood of the table; null where the next two are known
   * @param densityKgM3 null: the table's
   * @param modulusMPa null: the table's
   */
  public record Measured(
      double fromButtMm,
      double coreHalfAtButtMm,
      String wood,
      Double densityKgM3,
      Double modulusMPa) {}

  /**
   * A newer caliper entry with the splice; the older ones stay on the record. Runs that come after
   * it are worked out as those of a spliced shaft.
   *
   * @throws WorkshopException also where something of it cannot be: the line says what
   */
  public void keep(String tag, Measured splice) throws WorkshopException {
    Blank blank = workshop.blanks().require(tag);
    JsonLine newest = JsonLine.parse(workshop.blanks().caliperNow(blank).document());
    try {
      double lengthMm = reader.read(newest.toString()).shaft().taper().lengthMm();
      newest.object("shaft").put("splice", json(splice, lengthMm));
      workshop.blanks().addCaliperEntry(blank, reader.read(newest.toString()), "spliced");
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage().replaceFirst("^shaft\\.", ""));
    }
    gradeAgain.of(blank);
  }

  private JsonLine json(Measured splice, double lengthMm) throws WorkshopException {
    JsonLine json =
        new JsonLine()
            .put("fromMm", lengthMm - splice.fromButtMm())
            .put("coreHalfAtButtMm", splice.coreHalfAtButtMm());
    Optional<Species> known = species.find(splice.wood());
    Double density = or(splice.densityKgM3(), known.map(Species::density12KgM3));
    Double modulus = or(splice.modulusMPa(), known.map(Species::modulus12MPa));
    if (density == null || modulus == null) {
      throw new WorkshopException(
          "splice wood: "
              + splice.wood()
              + " has no published figures here; write density and modulus, as 1120 15500");
    }
    return json.put("densityKgM3", density).put("modulusMPa", modulus);
  }

  private static Double or(Double said, Optional<Double> published) {
    return said != null ? said : published.orElse(null);
  }
}
