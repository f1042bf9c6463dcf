/**
 * A finish plan and what comes of it, for every screen that shows one: {@link
 * sagwright.screen.finish.PlanPicture} draws a {@code job.PlannedFinish} as figures, verdict and
 * effects; {@link sagwright.screen.finish.PlanScene} lays it in its blank.
 */
package sagwright.screen.finish;
