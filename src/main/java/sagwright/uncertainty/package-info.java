/**
 * What an answer says of its own trust: an {@link sagwright.uncertainty.Estimate}, the {@link
 * sagwright.uncertainty.Budget} behind it, and the {@link sagwright.uncertainty.Warning}s beside
 * it; a second opinion by {@link sagwright.uncertainty.AdaptiveMonteCarlo} and {@link
 * sagwright.uncertainty.BudgetCheck}.
 *
 * <p>Pure numbers: knows no beam, no wood, no file and no screen.
 */
package sagwright.uncertainty;
