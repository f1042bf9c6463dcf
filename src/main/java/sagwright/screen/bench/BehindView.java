package sagwright.screen.bench;

import java.util.List;
import sagwright.drawing.SeriesBars;

/**
 * What stands behind an answer's ±, in words but for the bars.
 *
 * @param budgetOf which run's budget the bars show
 * @param budget greatest first
 * @param together the standard uncertainty, one line
 * @param advice what to do about the greatest source, one sentence
 * @param secondOpinion what the random draws say, one or two sentences
 * @param woods modulus and density at several moistures
 * @param turns how the runs agree, what out-of-round and grain do, sentences
 * @param assumed what was taken for want of better, a sentence; empty for nothing
 */
public record BehindView(
    String budgetOf,
    List<SeriesBars.Bar> budget,
    String together,
    String advice,
    String secondOpinion,
    List<Wood> woods,
    List<String> turns,
    String assumed) {
  public BehindView {
    budget = List.copyOf(budget);
    woods = List.copyOf(woods);
    turns = List.copyOf(turns);
  }

  /**
   * The wood at one moisture.
   *
   * @param when as "as tested, 11.2 %"
   * @param modulusGPa as written; a dash where a formula does not reach
   * @param densityKgM3 likewise
   */
  public record Wood(String when, String modulusGPa, String densityKgM3) {}
}
