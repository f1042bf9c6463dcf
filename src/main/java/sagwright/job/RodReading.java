package sagwright.job;

import java.time.Instant;
import sagwright.uncertainty.Estimate;

/**
 * What the bench has shown of its check rod at one time.
 *
 * @param shownMPa the modulus that the rod would have by it, with all that is uncertain in it
 * @param noisePercent what alone differs from test to test, one standard uncertainty; NaN where it
 *     was not found
 * @param differencePercent from what the rod's own steel says
 * @param source the run, or that it was typed in
 */
public record RodReading(
    Instant at, Estimate shownMPa, double noisePercent, double differencePercent, String source) {}
