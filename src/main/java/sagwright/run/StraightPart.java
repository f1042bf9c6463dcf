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
 */
record StraightPart(int fromBlock, int toBlock, boolean bends, double slopeChange) {}
