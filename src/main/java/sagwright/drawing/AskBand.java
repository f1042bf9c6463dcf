package sagwright.drawing;

/** The stiffness that an ask allows, in N/mm. */
public record AskBand(double fromNPerMm, double toNPerMm) {
  /** An ask with its tolerance in percent. */
  public static AskBand of(double stiffnessNPerMm, double tolerancePercent) {
    double half = stiffnessNPerMm * tolerancePercent / 100;
    return new AskBand(stiffnessNPerMm - half, stiffnessNPerMm + half);
  }

  double width() {
    return toNPerMm - fromNPerMm;
  }
}
