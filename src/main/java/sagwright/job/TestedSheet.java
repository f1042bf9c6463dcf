package sagwright.job;

import sagwright.modulus.Evaluation;
import sagwright.sheet.Sheet;
import sagwright.survey.SurveyRun;

/** A sheet that has a run, with what that run has shown when taken alone. */
public record TestedSheet(Sheet sheet, Evaluation evaluation) {
  SurveyRun surveyRun() {
    return new SurveyRun(sheet.bendTest(), evaluation);
  }
}
