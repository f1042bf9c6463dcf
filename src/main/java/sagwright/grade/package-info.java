/**
 * What a player asked for and how surely a shaft will be it: {@link sagwright.grade.Order} and a
 * {@link sagwright.finish.Forecast} in, {@link sagwright.grade.Grader} at work, {@link
 * sagwright.grade.GradedForecast} out.
 *
 * <p>Formulas: docs/contract.md, section 5, and JCGM 106. Knows no blank's record, no file and no
 * screen.
 */
package sagwright.grade;
