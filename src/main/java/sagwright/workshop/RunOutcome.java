package sagwright.workshop;

/**
 * What a run gave: an answer, or why there is none. One of the two is null.
 *
 * @param answer the answer of docs/contract.md, section 4
 * @param noAnswer in words
 */
public record RunOutcome(String answer, String noAnswer) {
  public RunOutcome {
    if ((answer == null) == (noAnswer == null)) {
      throw new IllegalArgumentException("a run has an answer or a reason why not");
    }
  }

  public static RunOutcome answered(String answer) {
    return new RunOutcome(answer, null);
  }

  public static RunOutcome without(String why) {
    return new RunOutcome(null, why);
  }
}
