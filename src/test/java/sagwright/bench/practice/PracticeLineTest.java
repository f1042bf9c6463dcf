package sagwright.bench.practice;

import sagwright.bench.ByteLineContract;
import sagwright.bench.InventedBench;
import sagwright.bench.LineOpener;

class PracticeLineTest extends ByteLineContract {
  private final PracticeHead head =
      new PracticeHead(InventedBench.CALIBRATION, PracticeOptions.BELIEVABLE, PracticeClock.real());

  @Override
  protected LineOpener head() {
    return head;
  }

  @Override
  protected void pullPlug() {
    head.pullPlug();
  }

  @Override
  protected void endHead() {
    // It has no thread and no port of its own.
  }
}
