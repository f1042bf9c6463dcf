package sagwright.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.Readings;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;

/**
 * Reads sheets, {@code sagwright-sheet/1}, by the rules of docs/contract.md, section 3. Nothing is
 * guessed: what is unknown, missing or cannot be is a {@link BadDocumentException} that names it.
 */
public final class SheetReader {
  public static final String FORMAT = "sagwright-sheet/1";

  private final SpeciesTable speciesTable;

  public SheetReader(SpeciesTable speciesTable) {
    this.speciesTable = speciesTable;
  }

  /**
   * A sheet from a file.
   *
   * @throws BadDocumentException also where the file cannot be read
   */
  public Sheet readFile(Path file) throws BadDocumentException {
    return read(DocumentText.ofFile(file));
  }

  /** A sheet from its text, with or without tag, set-up and run; one with a run has a set-up. */
  public Sheet read(String text) throws BadDocumentException {
    JsonNode root = JsonDocument.parse(text);
    new JsonFormat(root).require(FORMAT);
    JsonObject json =
        new JsonObject(
            root,
            "",
            "format",
            "shaft",
            "setup",
            "modulusToShearRatio",
            "modulusToShearRatioUncertainty",
            "instrument",
            "run",
            "handRead");
    Assumptions assumptions = new Assumptions();
    ShaftReader shaftReader = new ShaftReader(json.required("shaft"), assumptions);
    String tag = shaftReader.tag();
    Shaft shaft = shaftReader.read();
    BenchSetUp setUp = setUp(json, shaft, assumptions);
    ShearRatio ratio = ratio(json, shaft.species(), assumptions);
    Instrument instrument = instrument(json, assumptions);
    if (shaft.splice() != null && instrument.gaugeSpringNPerMm() != 0) {
      throw new BadDocumentException(
          "instrument.gaugeSpringNPerMm",
          "is " + instrument.gaugeSpringNPerMm() + ", must be 0 for a shaft with shaft.splice");
    }
    Readings readings = ReadingsReader.readFrom(json);
    if (readings != null && setUp == null) {
      throw json.bad("setup", "is missing");
    }
    return new Sheet(
        tag,
        shaftReader.stage(),
        shaftReader.bowMm(),
        shaft,
        setUp,
        ratio,
        instrument,
        readings,
        ReadingsReader.startedAt(json),
        assumptions.names(),
        DocumentText.onOneLine(text));
  }

  private static BenchSetUp setUp(JsonObject json, Shaft shaft, Assumptions assumptions)
      throws BadDocumentException {
    if (!json.has("setup")) {
      return null;
    }
    return new SetUpReader(json.required("setup"), "setup")
        .read(shaft.taper().lengthMm(), assumptions);
  }

  private ShearRatio ratio(JsonObject json, String species, Assumptions assumptions)
      throws BadDocumentException {
    double ofSpecies =
        speciesTable
            .find(species)
            .map(Species::modulusToShearRatio)
            .orElse(ShearRatio.ASSUMED_FOR_UNKNOWN_SPECIES);
    return new ShearRatio(
        assumptions.orAssume(json, "modulusToShearRatio", ofSpecies),
        json.numberOr("modulusToShearRatioUncertainty", 0, NumberRange.NOT_NEGATIVE));
  }

  private static Instrument instrument(JsonObject json, Assumptions assumptions)
      throws BadDocumentException {
    JsonObject given =
        json.has("instrument")
            ? json.object(
                "instrument",
                "loadUncertaintyN",
                "loadScaleUncertaintyPercent",
                "gaugeUncertaintyMm",
                "gaugeScaleUncertaintyPercent",
                "gaugeSpringNPerMm")
            : null;
    Instrument assumed = Instrument.ASSUMED;
    return new Instrument(
        assumptions.orAssume(given, "loadUncertaintyN", assumed.loadUncertaintyN()),
        assumptions.orAssume(
            given, "loadScaleUncertaintyPercent", assumed.loadScaleUncertaintyPercent()),
        assumptions.orAssume(given, "gaugeUncertaintyMm", assumed.gaugeUncertaintyMm()),
        assumptions.orAssume(
            given, "gaugeScaleUncertaintyPercent", assumed.gaugeScaleUncertaintyPercent()),
        given == null ? 0 : given.numberOr("gaugeSpringNPerMm", 0, NumberRange.NOT_NEGATIVE));
  }
}
