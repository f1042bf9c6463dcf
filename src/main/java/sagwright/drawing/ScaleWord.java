package sagwright.drawing;

/** A word of the shop's scale and its range in N/mm; the outermost may end at ±infinity. */
public record ScaleWord(String word, double fromNPerMm, double toNPerMm) {
  boolean holds(double stiffnessNPerMm) {
    return fromNPerMm <= stiffnessNPerMm && stiffnessNPerMm < toNPerMm;
  }
}
