package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import sagwright.finish.BlankWood;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.Sheet;
import sagwright.survey.DifferentShaftsException;
import sagwright.survey.ModelKind;
import sagwright.survey.SurveyAnswer;
import sagwright.survey.SurveyModel;
import sagwright.survey.SurveyProblem;
import sagwright.survey.SurveyRun;
import sagwright.survey.SurveySolver;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;

/** What several runs on one shaft show together: docs/contract.md, section 8. */
public final class SurveyShaft {
  private final Evaluator evaluator;

  public SurveyShaft(SpeciesTable species) {
    this.evaluator = new Evaluator(species);
  }

  /**
   * A survey with the runs that it rests on.
   *
   * @param tag the shaft's; null where no sheet has one
   * @param assumed the keys whose defaults any of the sheets took, each once
   */
  public record Answer(
      String tag, List<TestedSheet> sheets, SurveyAnswer survey, List<String> assumed) {
    public List<SurveyRun> runs() {
      return sheets.stream().map(TestedSheet::surveyRun).toList();
    }

    /** What the surveyed blank gives to the shaft that is to come out of it. */
    public BlankWood wood() {
      Sheet first = sheets.get(0).sheet();
      SurveyModel proposed = survey.proposed();
      return new BlankWood(
          first.shaft().taper(),
          firstMassG(),
          proposed.along(),
          proposed.kind() == ModelKind.RATIO ? proposed.ratio().value() : first.ratio().value(),
          first.shaft().splice() != null);
    }

    private Double firstMassG() {
      return sheets.stream()
          .map(s -> s.sheet().shaft().massG())
          .filter(Objects::nonNull)
          .findFirst()
          .orElse(null);
    }
  }

  /** Sheets of one outline that bear different tags. */
  record TagsDiffer(String first, String other) implements Warning {
    @Override
    public String inWords() {
      return "the sheets bear different tags, " + first + " and " + other;
    }
  }

  /**
   * @throws PoorRunException where the run gives no modulus
   */
  public TestedSheet evaluate(Sheet sheet) throws PoorRunException {
    return new TestedSheet(sheet, evaluator.evaluate(sheet.bendTest()));
  }

  /**
   * @param sheets two or more
   */
  public Answer of(List<TestedSheet> sheets) throws DifferentShaftsException {
    SurveyProblem problem = SurveyProblem.of(sheets.stream().map(TestedSheet::surveyRun).toList());
    SurveyAnswer survey = new SurveySolver().solve(problem);
    List<String> tags =
        sheets.stream().map(s -> s.sheet().tag()).filter(Objects::nonNull).distinct().toList();
    List<Warning> warnings = new ArrayList<>(survey.warnings());
    if (tags.size() > 1) {
      warnings.add(new TagsDiffer(tags.get(0), tags.get(1)));
    }
    return new Answer(
        tags.isEmpty() ? null : tags.get(0),
        List.copyOf(sheets),
        survey.withWarnings(warnings),
        sheets.stream().flatMap(s -> s.sheet().assumed().stream()).distinct().toList());
  }
}
