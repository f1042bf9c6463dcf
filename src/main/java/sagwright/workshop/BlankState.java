package sagwright.workshop;

/**
 * How a blank stands now.
 *
 * @param stage null where none was ever said
 * @param promisedTo the number of the order, null for none
 * @param endedWhy null for a blank that is still there
 */
public record BlankState(String stage, String promisedTo, String endedWhy) {
  /** The stage at which a blank is a blank no more (docs/contract.md, section 7). */
  public static final String FINISHED_CUE = "finished cue";

  /** The "stage" of the rod of known size, which is no wood and is promised to nobody. */
  public static final String CHECK_ROD = "check rod";

  public boolean isCheckRod() {
    return CHECK_ROD.equals(stage);
  }

  /** Whether it may be promised. */
  public boolean isFree() {
    return promisedTo == null && endedWhy == null && !FINISHED_CUE.equals(stage) && !isCheckRod();
  }
}
