package sagwright.grade;

/**
 * A range that cues of ash and maple commonly lie in. Common practice, no source: it warns of a
 * slip of the finger, and stops nobody.
 */
public record CommonPractice(double from, double to, String unit) {
  public static final CommonPractice LENGTH = new CommonPractice(1370, 1550, "mm");
  public static final CommonPractice TIP = new CommonPractice(8, 13.5, "mm");
  public static final CommonPractice BUTT = new CommonPractice(26, 33, "mm");
  public static final CommonPractice MASS = new CommonPractice(425, 625, "g");
  public static final CommonPractice BALANCE = new CommonPractice(350, 530, "mm");
  public static final CommonPractice TOLERANCE = new CommonPractice(1, 15, "%");
  public static final CommonPractice FERRULE_LENGTH = new CommonPractice(5, 25, "mm");
  public static final CommonPractice BUTT_FLAT = new CommonPractice(40, 130, "mm");

  boolean holds(double value) {
    return value >= from && value <= to;
  }
}
