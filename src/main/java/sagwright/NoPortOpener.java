package sagwright;

import sagwright.bench.ByteLine;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;

/** Stands for a bench head of which nobody has said yet where it is plugged in. */
record NoPortOpener() implements LineOpener {
  @Override
  public String description() {
    return "no bench head chosen";
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    throw new LineNotOpenedException("no bench head is chosen yet: choose its port, F9");
  }
}
