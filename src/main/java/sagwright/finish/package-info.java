/**
 * From a blank and a finish plan to what the finished shaft will be: {@link
 * sagwright.finish.BlankWood} and {@link sagwright.finish.FinishPlan} in, {@link
 * sagwright.finish.Forecaster} at work, {@link sagwright.finish.Forecast} out. {@link
 * sagwright.finish.CutFinder} lays the finished round inside the blank, {@link
 * sagwright.finish.FinishCheck} says what a plan cannot be, {@link sagwright.finish.LeadSolver}
 * finds the lead that brings weight and balance.
 *
 * <p>Formulas: docs/contract.md, section 5. Knows no order, no player, no file and no screen.
 */
package sagwright.finish;
