package sagwright.sheet;

import java.util.List;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.BendTest;
import sagwright.modulus.Instrument;
import sagwright.modulus.Shaft;
import sagwright.modulus.ShearRatio;
import sagwright.run.Readings;
import sagwright.uncertainty.Warning;

/**
 * A sheet as read: one shaft, and where it has them a set-up and a run.
 *
 * @param tag null where left out
 * @param stage null where left out
 * @param bowMm null where left out
 * @param setUp null for a blank not tested yet
 * @param readings null for a blank not tested yet
 * @param startedAt as written, null where left out
 * @param assumed the keys whose defaults were taken (docs/contract.md, section 3)
 * @param warnings what is to be said of the sheet itself, whatever its run shows
 * @param json the whole document as it came, on one line, keys that begin with x- included
 */
public record Sheet(
    String tag,
    String stage,
    Double bowMm,
    Shaft shaft,
    BenchSetUp setUp,
    ShearRatio ratio,
    Instrument instrument,
    Readings readings,
    String startedAt,
    List<String> assumed,
    List<Warning> warnings,
    String json) {
  public Sheet {
    assumed = List.copyOf(assumed);
    warnings = List.copyOf(warnings);
  }

  public boolean hasRun() {
    return readings != null;
  }

  /** The problem to be worked out; only for a sheet that has a run. */
  public BendTest bendTest() {
    if (!hasRun()) {
      throw new IllegalStateException("this sheet has no run");
    }
    return new BendTest(shaft, setUp, instrument, ratio, readings);
  }
}
