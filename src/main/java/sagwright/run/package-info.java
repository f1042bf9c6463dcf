/**
 * From readings to a stiffness: {@link sagwright.run.Readings} in, {@link
 * sagwright.run.StiffnessFit} out, by {@link sagwright.run.StiffnessFinder}.
 *
 * <p>A run sampled on the bench goes from {@link sagwright.run.FreshReadings} through {@link
 * sagwright.run.LoadCourse} (rest, rise, greatest load), {@link sagwright.run.LoadingBranch} (wild
 * samples), {@link sagwright.run.StraightPartSearch} (the fit window) and {@link
 * sagwright.run.WindowLine} to {@link sagwright.run.YorkLine}; pairs noted by hand go through
 * {@link sagwright.run.HandReadFit}. What a reader should know of the run comes as {@link
 * sagwright.run.RunWarning}s.
 *
 * <p>Knows loads and deflections only: no beam, no wire, no file.
 */
package sagwright.run;
