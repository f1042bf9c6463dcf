package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sagwright.modulus.ModulusAlong;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.SheetReader;
import sagwright.survey.DifferentShaftsException;
import sagwright.survey.SurveyProblem;
import sagwright.uncertainty.Estimate;
import sagwright.uncertainty.Warning;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.ShortAnswer;
import sagwright.workshop.ShortRecord;
import sagwright.workshop.ShortRecords;
import sagwright.workshop.ShortRun;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * The modulus of a blank by its runs that count: docs/contract.md, section 7. One run counts as it
 * was answered. Several on the shaft as it was at the newest of them count together as a survey has
 * it; what a survey has found is kept until there is another run.
 */
public final class BlankModulus {
  private final Workshop workshop;
  private final SpeciesTable species;
  private final SheetReader reader;
  private final SurveyShaft survey;
  private final Queue<ShortRecords.SurveyedWood> found = new ConcurrentLinkedQueue<>();

  /** What thousands of runs say alike is read once. */
  private final Map<String, List<String>> texts = new ConcurrentHashMap<>();

  private final Map<String, List<Warning>> warnings = new ConcurrentHashMap<>();

  public BlankModulus(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.species = species;
    this.reader = new SheetReader(species);
    this.survey = new SurveyShaft(species);
  }

  /** Keeps what has been surveyed since, so that it need not be surveyed again. */
  public void keepSurveys() throws WorkshopException {
    List<ShortRecords.SurveyedWood> all = new ArrayList<>();
    for (var each = found.poll(); each != null; each = found.poll()) {
      all.add(each);
    }
    if (!all.isEmpty()) {
      workshop.shortRecords(reader).keep(all);
    }
  }

  /** Surveys a blank now where it has several runs, so that ranking it need not. */
  void survey(Blank blank) throws WorkshopException {
    of(workshop.shortRecords(reader).of(blank));
    keepSurveys();
  }

  /**
   * Empty for a blank that has no run that counts. Any thread may ask; {@link #keepSurveys} follows
   * when all has been asked.
   */
  public Optional<KnownWood> of(ShortRecord blank) throws WorkshopException {
    List<ShortRun> counting = blank.counting();
    if (counting.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(counting.size() == 1 ? ofOne(counting.get(0)) : ofSeveral(blank));
  }

  private KnownWood ofOne(ShortRun run) {
    ShortAnswer answer = run.answer();
    return new KnownWood(
        ModulusAlong.constant(new Estimate(answer.modulusMPa(), answer.modulusStdUncertaintyMPa())),
        answer.ratio() == null ? ratioOf(answer.species()) : answer.ratio(),
        List.of(run.runId()),
        texts(answer.assumed()),
        warnings.computeIfAbsent(answer.warnings(), json -> kept(texts(json))));
  }

  private double ratioOf(String speciesName) {
    return species
        .find(speciesName)
        .map(Species::modulusToShearRatio)
        .orElse(ShearRatio.ASSUMED_FOR_UNKNOWN_SPECIES);
  }

  private List<String> texts(String json) {
    return texts.computeIfAbsent(json, text -> List.copyOf(JsonLine.textsOf(text)));
  }

  private static List<Warning> kept(List<String> words) {
    return words.stream().<Warning>map(KeptWarning::new).collect(Collectors.toUnmodifiableList());
  }

  private KnownWood ofSeveral(ShortRecord blank) throws WorkshopException {
    Optional<String> kept = blank.surveyedWood();
    if (kept.isPresent()) {
      return SurveyedWood.read(kept.get());
    }
    KnownWood known = surveyed(blank);
    found.add(
        new ShortRecords.SurveyedWood(
            blank.blank().id(), blank.basis(), SurveyedWood.write(known)));
    return known;
  }

  private KnownWood surveyed(ShortRecord blank) throws WorkshopException {
    List<ShortRun> counting = blank.counting();
    List<TestedSheet> sheets = new ArrayList<>();
    List<Long> runIds = new ArrayList<>();
    List<List<Warning>> ofBench = new ArrayList<>();
    try {
      for (ShortRun run : counting) {
        TestedRun tested = tested(workshop.runs().run(run.runId()));
        sheets.add(new TestedSheet(tested.sheet(), tested.evaluation()));
        runIds.add(run.runId());
        ofBench.add(tested.ofBench());
      }
      Shaft newest = sheets.get(sheets.size() - 1).sheet().shaft();
      for (int i = sheets.size() - 2; i >= 0; i--) {
        if (!SurveyProblem.isSameShaft(sheets.get(i).sheet().shaft(), newest)) {
          sheets.remove(i);
          runIds.remove(i);
          ofBench.remove(i);
        }
      }
      if (sheets.size() == 1) {
        return ofOne(counting.get(counting.size() - 1));
      }
      SurveyShaft.Answer answer = survey.of(sheets);
      return new KnownWood(
          answer.survey().modulusAlong(),
          answer.wood().modulusToShearRatio(),
          runIds,
          answer.assumed(),
          Stream.concat(answer.survey().warnings().stream(), ofBench.stream().flatMap(List::stream))
              .distinct()
              .toList());
    } catch (BadDocumentException | PoorRunException | DifferentShaftsException e) {
      throw new WorkshopException("the record of " + blank.blank().tag() + ": " + e.getMessage());
    }
  }

  private TestedRun tested(Run run)
      throws WorkshopException, BadDocumentException, PoorRunException {
    TestedSheet tested = survey.evaluate(reader.read(workshop.runs().sheet(run)));
    return new TestedRun(run, tested.sheet(), tested.evaluation());
  }
}
