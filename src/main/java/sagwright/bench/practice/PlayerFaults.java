package sagwright.bench.practice;

/**
 * What goes wrong while a sheet is played, to be rehearsed.
 *
 * @param seed the same seed, the same lines
 * @param dropShare of the lines, 0 to 1, is not sent
 * @param flipShare of the lines, 0 to 1, is sent with one bit turned over
 * @param stallS so many seconds nothing is sent from the middle of the run on; the head reads on
 * @param restarts whether the head starts anew in the middle of the run
 */
public record PlayerFaults(
    long seed, double dropShare, double flipShare, double stallS, boolean restarts) {
  public static final PlayerFaults NONE = new PlayerFaults(1, 0, 0, 0, false);
}
