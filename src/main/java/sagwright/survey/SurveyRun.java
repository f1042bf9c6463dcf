package sagwright.survey;

import sagwright.modulus.BendTest;
import sagwright.modulus.Evaluation;

/** One run of a survey: what was tested, and what it has shown when taken alone. */
public record SurveyRun(BendTest test, Evaluation evaluation) {}
