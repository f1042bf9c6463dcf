package sagwright.job;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import sagwright.beam.Flexibility;
import sagwright.beam.SplicedFlexibility;
import sagwright.beam.SplicedTaper;
import sagwright.finish.FinishPlan;
import sagwright.grade.WordScale;

/**
 * What a word of the shop's scale means for a shaft as it lies. The scale speaks of finished
 * shafts: where a blank is tried for an order, a word is brought back from that order's shape to
 * the blank's, by the published modulus of its wood; where it is not, the shaft is felt as it is.
 *
 * @param nowOverFinished stiffness as it lies over stiffness as the scale means it
 */
public record GuessScale(WordScale words, double nowOverFinished) {
  /**
   * @param tried null for no order
   */
  public static GuessScale of(LaidBlank laid, TriedOrder tried, WordScale words) {
    if (tried == null) {
      return new GuessScale(words, 1);
    }
    double ratio = laid.modulusToShearRatio();
    double nowNPerMm = laid.expectedStiffnessNPerMm();
    double modulusMPa =
        nowNPerMm * Flexibility.of(laid.shaft().taper(), laid.setUp().positions()).perMm(ratio);
    FinishPlan plan = tried.order().finish();
    double finishedMmPerN =
        SplicedFlexibility.of(new SplicedTaper(plan.taper(), plan.splice()), words.usual())
            .mmPerN(modulusMPa, ratio);
    return new GuessScale(words, nowNPerMm * finishedMmPerN);
  }

  /**
   * The middle of a word's range, for the shaft as it lies.
   *
   * @param typed a word, or as much of its beginning as no other word shares; case plays no part
   * @return empty where no word, or more than one, begins like that
   */
  public OptionalDouble nPerMm(String typed) {
    String begins = typed.toLowerCase(Locale.ROOT);
    List<String> meant =
        words.words().stream().filter(w -> w.toLowerCase(Locale.ROOT).startsWith(begins)).toList();
    List<String> exactly = meant.stream().filter(w -> w.equalsIgnoreCase(typed)).toList();
    if (begins.isEmpty() || (meant.size() != 1 && exactly.size() != 1)) {
      return OptionalDouble.empty();
    }
    String word = exactly.isEmpty() ? meant.get(0) : exactly.get(0);
    return OptionalDouble.of(words.askFor(word).stiffnessNPerMm() * nowOverFinished);
  }
}
