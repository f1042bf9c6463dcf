package sagwright;

import java.util.function.Supplier;
import sagwright.bench.Calibration;
import sagwright.bench.LineOpener;
import sagwright.job.BenchPlace;
import sagwright.job.CheckRodState;
import sagwright.job.HeadPorts;
import sagwright.workshop.WorkshopException;

/**
 * A bench whose head sends over a serial port.
 *
 * @param inForce gives the calibration that the bench works by, null where there is none yet
 * @param rod the check rod, as it was seen last
 */
record SerialPlace(SwitchedLine line, Supplier<Calibration> inForce, CheckRodState rod)
    implements BenchPlace {
  @Override
  public LineOpener opener() {
    return line;
  }

  @Override
  public Calibration calibration() {
    return inForce.get();
  }

  @Override
  public void lookAgain() throws WorkshopException {
    rod.readAgain();
  }

  @Override
  public String provedInWords() {
    return rod.inWords();
  }

  @Override
  public HeadPorts ports() {
    return line;
  }
}
