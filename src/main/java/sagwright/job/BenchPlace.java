package sagwright.job;

import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.LineOpener;
import sagwright.workshop.WorkshopException;

/**
 * The bench that stands in the workshop: how it is reached, and by what its counts become newtons
 * and millimetres. Behind it is a serial port, or the practice bench.
 */
public interface BenchPlace {
  LineOpener opener();

  /** Null where the bench has not been calibrated yet: no test can be made then. */
  Calibration calibration();

  /** Told of what is laid on the bench; a practice bench bends like it from then on. */
  default void laid(LaidBlank blank) {}

  /**
   * Told of the masses that a calibration is to hang next; they hang on a practice bench at once,
   * on a real one the maker hangs them.
   */
  default void hangs(double loadN) {}

  /** The same of the gauge block that is to lie under the stem. */
  default void lifts(double mm) {}

  /** Told of every new snapshot, on the head-reader thread. */
  default void follow(BenchSnapshot snapshot) {}

  /** Where its head is, or may be. */
  default HeadPorts ports() {
    return HeadPorts.only(opener().description());
  }

  default boolean isPractice() {
    return false;
  }

  /** Looks again how the bench was proved last: a run may have been the check rod's. */
  default void lookAgain() throws WorkshopException {}

  /** How the bench was proved last, one line; empty where there is nothing to say. */
  default String provedInWords() {
    return "";
  }
}
