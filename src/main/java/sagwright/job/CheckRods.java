package sagwright.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sagwright.beam.SetUp;
import sagwright.check.CheckRod;
import sagwright.modulus.Shaft;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.BlankState;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.CheckReading;
import sagwright.workshop.RackRow;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * The workshop's check rod and what was read of it. The rod lies on the rack as a blank of its own
 * stage, so that its test is a run like any other; the newest one counts.
 */
public final class CheckRods {
  private static final String ROD_KEY = "x-rod";
  private static final String LINE = "line";

  private final Workshop workshop;
  private final SheetReader reader;

  public CheckRods(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
  }

  /**
   * A rod on the rack.
   *
   * @param since when it was entered, or measured anew
   */
  public record Kept(Blank blank, CheckRod rod, Instant since) {}

  /** The rod that counts. */
  public Optional<Kept> now() throws WorkshopException {
    Optional<Blank> newest =
        workshop.rack().rows().stream()
            .filter(row -> row.state().isCheckRod() && row.state().endedWhy() == null)
            .map(RackRow::blank)
            .max(Comparator.comparingLong(Blank::id));
    return newest.isEmpty() ? Optional.empty() : Optional.of(kept(newest.get()));
  }

  private Kept kept(Blank blank) throws WorkshopException {
    CaliperEntry entry = workshop.blanks().caliperNow(blank);
    Sheet sheet = read(blank.tag(), entry.document());
    Shaft shaft = sheet.shaft();
    JsonLine own = JsonLine.parse(entry.document()).objectOrNull("shaft").objectOrNull(ROD_KEY);
    double diameterMm = shaft.taper().stations().get(0).depthMm();
    CheckRod rod =
        new CheckRod(
            shaft.taper().lengthMm(),
            new Estimate(diameterMm, shaft.diameterUncertaintyMm()),
            isOurs(own)
                ? new Estimate(own.number("modulusMPa"), own.number("modulusUncertaintyMPa"))
                : CheckRod.ASSUMED_STEEL_MODULUS_MPA,
            isOurs(own) ? own.number("poissonRatio") : CheckRod.ASSUMED_STEEL_POISSON_RATIO);
    return new Kept(blank, rod, entry.at());
  }

  /** A rod that was brought in as a sheet may lack what our own form asks for. */
  private static boolean isOurs(JsonLine own) {
    return own != null
        && own.number("modulusMPa") != null
        && own.number("modulusUncertaintyMPa") != null
        && own.number("poissonRatio") != null;
  }

  /**
   * Enters a rod, or what it was measured to be anew.
   *
   * @param tag as of any blank
   */
  public void enter(String tag, CheckRod rod) throws WorkshopException {
    Optional<Blank> there = workshop.blanks().find(tag);
    if (there.isPresent() && !workshop.blanks().state(there.get()).isCheckRod()) {
      throw new WorkshopException(
          "tag: " + there.get().tag() + " is a blank: give the rod a tag of its own");
    }
    Sheet sheet = read(tag, document(tag, rod));
    try {
      sheet.requireTag();
    } catch (BadDocumentException e) {
      throw new WorkshopException(e.getMessage());
    }
    if (there.isPresent()) {
      workshop.blanks().addCaliperEntry(there.get(), sheet, "measured anew");
    } else {
      workshop.blanks().enter(sheet);
    }
  }

  private static String document(String tag, CheckRod rod) {
    double diameter = rod.diameterMm().value();
    List<JsonLine> ends = new ArrayList<>();
    for (double x : new double[] {0, rod.lengthMm()}) {
      ends.add(new JsonLine().put("xMm", x).put("depthMm", diameter));
    }
    JsonLine shaft =
        new JsonLine()
            .put("tag", tag)
            .put("species", SafeStress.STEEL)
            .put("stage", BlankState.CHECK_ROD)
            .put("lengthMm", rod.lengthMm())
            .put("diameterUncertaintyMm", rod.diameterMm().standardUncertainty())
            .put("diameterCommonShare", 1)
            .putObjects("stations", ends)
            .put(
                ROD_KEY,
                new JsonLine()
                    .put("modulusMPa", rod.modulusMPa().value())
                    .put("modulusUncertaintyMPa", rod.modulusMPa().standardUncertainty())
                    .put("poissonRatio", rod.poissonRatio()));
    return new JsonLine()
        .put("format", SheetReader.FORMAT)
        .put("shaft", shaft)
        .put("modulusToShearRatio", 2 * (1 + rod.poissonRatio()))
        .toString();
  }

  /**
   * Keeps a reading that was noted elsewhere.
   *
   * @param shownNPerMm stiffness of the rod, frame taken off
   */
  public void keepTyped(Kept kept, SetUp setUp, double shownNPerMm) throws WorkshopException {
    if (kept.rod().lengthMm() < setUp.supportBMm()) {
      throw new WorkshopException("the rod does not reach the supports of the usual set-up");
    }
    Estimate expected = kept.rod().stiffnessNPerMm(setUp);
    double byDiameter =
        kept.rod().budget(setUp).shareOf("rodDiameter") * expected.standardUncertainty();
    double modulus = kept.rod().modulusMPa().value() * shownNPerMm / expected.value();
    String answer =
        new JsonLine()
            .put("shaftStiffnessNPerMm", shownNPerMm)
            .put("modulusMPa", modulus)
            .put("modulusStdUncertaintyMPa", modulus * byDiameter / expected.value())
            .toString();
    String sheet = workshop.blanks().caliperNow(kept.blank()).document();
    workshop
        .checkReadings()
        .add(new CheckReading(Instant.EPOCH, kept.blank().tag(), sheet, answer));
  }

  /** All that was read of a rod and counts, oldest first. */
  public List<RodReading> readings(Kept kept) throws WorkshopException {
    List<RodReading> readings = new ArrayList<>();
    for (Run run : workshop.runs().counting(kept.blank())) {
      readings.add(
          reading(
              kept.rod(),
              Instant.parse(run.startedAt()),
              run.outcome().answer(),
              "run " + run.id()));
    }
    for (CheckReading typed : workshop.checkReadings().of(kept.blank().tag())) {
      readings.add(reading(kept.rod(), typed.at(), typed.answer(), "typed in"));
    }
    readings.sort(Comparator.comparing(RodReading::at));
    return readings;
  }

  private static RodReading reading(CheckRod rod, Instant at, String json, String source) {
    JsonLine answer = JsonLine.parse(json);
    double modulus = answer.number("modulusMPa");
    double noise =
        answer.objects("uncertaintyBudget").stream()
            .filter(c -> LINE.equals(c.text("source")))
            .mapToDouble(c -> 100 * c.number("contributionMPa") / modulus)
            .findFirst()
            .orElse(Double.NaN);
    double own = rod.modulusMPa().value();
    return new RodReading(
        at,
        new Estimate(modulus, answer.number("modulusStdUncertaintyMPa")),
        noise,
        100 * (modulus - own) / own,
        source);
  }

  private Sheet read(String tag, String document) throws WorkshopException {
    try {
      return reader.read(document);
    } catch (BadDocumentException e) {
      throw new WorkshopException(tag + ": " + e.getMessage());
    }
  }
}
