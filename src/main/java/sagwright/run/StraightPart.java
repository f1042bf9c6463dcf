package sagwright.run;

/**
 * The stretch of a loading branch to fit, and whether the branch bends.
 *
 * @param fromBlock first block
 * @param toBlock one past the last block
 * @param bends whether the branch bends more than its noise allows and the stretch is but the
 *     straightest of it
 * @param slopeChange where it bends: how far in N/mm the slope moves between the stretch's middle
 *     and its ends or the rest, whichever is farther; else 0
 * @param slip where the branch is broken by one and the stretch lies on one side of it; else null
 */
record StraightPart(int fromBlock, int toBlock, boolean bends, double slopeChange, Slip slip) {
  static StraightPart straight(int fromBlock, int toBlock) {
    return new StraightPart(fromBlock, toBlock, false, 0, null);
  }

  static StraightPart bending(int fromBlock, int toBlock, double slopeChange) {
    return new StraightPart(fromBlock, toBlock, true, slopeChange, null);
  }
}
