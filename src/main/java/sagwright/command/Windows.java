package sagwright.command;

import java.nio.file.Path;
import sagwright.bench.Calibration;
import sagwright.job.BenchPlace;

/** The window, and the practice bench; the program's root knows how they are made. */
public interface Windows {
  /** Whether there is a display for the window. */
  boolean hasDisplay();

  /** Opens the window and waits until it is closed. */
  void open(WindowRequest request) throws CommandFailure;

  /** A practice bench of its own. */
  BenchPlace practiceBench(long seed);

  /**
   * What the window is to be opened on.
   *
   * @param workshop null for the usual one
   * @param port null for the practice bench
   * @param calibration complete; null for the one that the workshop keeps
   * @param isDark whether it opens in the dark theme
   * @param seed of the practice bench
   */
  record WindowRequest(
      Path workshop, String port, int baud, Calibration calibration, boolean isDark, long seed) {}
}
