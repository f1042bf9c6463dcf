package sagwright.example;

import java.util.List;
import sagwright.beam.SectionShape;
import sagwright.beam.Splice;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.workshop.WorkshopException;

/**
 * A blank as calipers, scales and meter say it is.
 *
 * @param stage as the shop writes it
 * @param shape as it truly is
 * @param massG as weighed
 * @param moisturePercent as the meter showed it
 */
record ExampleSheet(
    String tag,
    String species,
    String stage,
    ExampleShape shape,
    double massG,
    double moisturePercent) {

  /** The same blank at the same stage is read the same, however often it is weighed. */
  Sheet read(SheetReader reader) throws WorkshopException {
    JsonLine shaft =
        new JsonLine()
            .put("tag", tag)
            .put("species", species)
            .put("stage", stage)
            .put(
                "section",
                shape.taper().shape() == SectionShape.RECTANGLE ? "rectangle" : "ellipse")
            .put("lengthMm", shape.taper().lengthMm())
            .put("massG", Math.round(10 * massG) / 10.0)
            .put("moisturePercent", moisturePercent)
            .putObjects("stations", stations());
    Splice splice = shape.splice();
    if (splice != null) {
      shaft.put(
          "splice",
          new JsonLine()
              .put("fromMm", splice.fromMm())
              .put("coreHalfAtButtMm", splice.coreHalfAtButtMm())
              .put("densityKgM3", splice.densityKgM3())
              .put("modulusMPa", splice.modulusMPa())
              .put("modulusUncertaintyPercent", splice.modulusUncertaintyPercent()));
    }
    String document =
        new JsonLine().put("format", SheetReader.FORMAT).put("shaft", shaft).toString();
    try {
      return reader.read(document);
    } catch (BadDocumentException e) {
      throw new WorkshopException("the example's " + tag + ": " + e.getMessage());
    }
  }

  private List<JsonLine> stations() {
    return shape.read(ExampleRack.randomOf("calipers on " + tag + " as " + stage)).stream()
        .map(
            s ->
                new JsonLine()
                    .put("xMm", s.xMm())
                    .put("depthMm", s.depthMm())
                    .put("widthMm", s.widthMm()))
        .toList();
  }
}
