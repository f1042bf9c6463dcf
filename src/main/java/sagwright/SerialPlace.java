package sagwright;

import sagwright.bench.Calibration;
import sagwright.bench.LineOpener;
import sagwright.job.BenchPlace;
import sagwright.job.HeadPorts;

/**
 * A bench whose head sends over a serial port.
 *
 * @param calibration null where it has not been calibrated yet
 */
record SerialPlace(SwitchedLine line, Calibration calibration) implements BenchPlace {
  @Override
  public LineOpener opener() {
    return line;
  }

  @Override
  public HeadPorts ports() {
    return line;
  }
}
