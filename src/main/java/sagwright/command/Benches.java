package sagwright.command;

import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.LineLostException;
import sagwright.bench.LineOpener;
import sagwright.run.Samples;

/** The benches that commands may reach; the program's root knows what stands behind them. */
public interface Benches {
  /** A serial port by the name that the system gives it. */
  LineOpener port(String path, int baud);

  /**
   * Plays a run as a bench head would send it.
   *
   * @return whether it was played to its end
   * @throws IllegalArgumentException where the run cannot be played by this calibration
   */
  boolean play(PlayRequest request, ByteLine line) throws LineLostException, InterruptedException;

  /**
   * What is to be played, how fast, and what is to go wrong.
   *
   * @param speed 1 for the run's own pace
   * @param dropShare of the lines not sent, 0 to 1
   * @param flipShare of the lines sent with a bit turned over, 0 to 1
   * @param stallS seconds of silence in the middle
   * @param restarts whether the head starts anew in the middle
   * @param seed of the faults
   */
  record PlayRequest(
      Samples samples,
      Calibration calibration,
      double speed,
      double dropShare,
      double flipShare,
      double stallS,
      boolean restarts,
      long seed) {}
}
