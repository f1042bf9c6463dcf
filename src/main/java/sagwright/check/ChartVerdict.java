package sagwright.check;

/** How the bench stands by its check rod, in words, and what to look at when it is out. */
public enum ChartVerdict {
  NOTHING_YET("not seen yet", "lay the check rod on its marks and press Test"),
  IN("in", "test it every morning, before the first shaft"),
  ONCE_ABOVE(
      "out: one reading too stiff",
      "lay the rod on its marks and test again; if it stays, look whether the supports stand too"
          + " close, whether the rod or the gauge's stem rubs, and whether the zero was taken with"
          + " nothing on the nose"),
  ONCE_BELOW(
      "out: one reading too soft",
      "lay the rod on its marks and test again; if it stays, look for a loose support or nose, dirt"
          + " under the rod, supports too far apart, and a gauge that is not square to the rod"),
  CREPT_UP(
      "out: the readings have crept up",
      "calibrate the load by masses and the gauge by blocks; look for a stem that has begun to"
          + " stick and for a bar or a bed that was changed"),
  CREPT_DOWN(
      "out: the readings have crept down",
      "tighten the frame, the supports and the nose; look for worn supports; then calibrate the"
          + " load by masses, the gauge by blocks and the frame by its bar");

  private final String inWords;
  private final String lookAt;

  ChartVerdict(String inWords, String lookAt) {
    this.inWords = inWords;
    this.lookAt = lookAt;
  }

  /** "in", or "out: …" with what is out. */
  public String inWords() {
    return inWords;
  }

  /** What to do or to look at next. */
  public String lookAt() {
    return lookAt;
  }

  public boolean isIn() {
    return this == IN;
  }
}
