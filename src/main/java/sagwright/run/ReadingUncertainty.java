package sagwright.run;

/**
 * Standard uncertainties of one reading, independent from sample to sample.
 *
 * @param loadN in newtons, 0 or above
 * @param gaugeMm in millimetres, 0 or above
 */
public record ReadingUncertainty(double loadN, double gaugeMm) {}
