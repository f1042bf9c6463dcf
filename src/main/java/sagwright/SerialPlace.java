package sagwright;

import sagwright.bench.Calibration;
import sagwright.bench.LineOpener;
import sagwright.job.BenchPlace;

/**
 * A bench whose head sends over a serial port.
 *
 * @param calibration null where it has not been calibrated yet
 */
record SerialPlace(LineOpener opener, Calibration calibration) implements BenchPlace {}
