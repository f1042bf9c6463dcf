/**
 * Several runs on one shaft: {@link sagwright.survey.SurveyProblem} in, {@link
 * sagwright.survey.SurveySolver}, {@link sagwright.survey.SurveyAnswer} out, with the modulus along
 * the shaft; {@link sagwright.survey.NextSetUp} says what to measure next, {@link
 * sagwright.survey.SetUpListening} where a set-up listens.
 *
 * <p>Formulas: docs/contract.md, section 8. Knows no file, no port and no screen.
 */
package sagwright.survey;
