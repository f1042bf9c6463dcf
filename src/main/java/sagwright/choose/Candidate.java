package sagwright.choose;

import sagwright.finish.BlankWood;

/**
 * A blank that may serve an order.
 *
 * @param wood null for a blank without a run that gave an answer
 */
public record Candidate(String tag, BlankWood wood) {
  /** A blank without a run that gave an answer. */
  public static Candidate untested(String tag) {
    return new Candidate(tag, null);
  }

  public boolean isTested() {
    return wood != null;
  }
}
