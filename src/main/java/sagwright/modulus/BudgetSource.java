package sagwright.modulus;

/** The names of the sources in a modulus's budget (docs/contract.md, section 4). */
public final class BudgetSource {
  public static final String LINE = "line";
  public static final String LOAD_SCALE = "loadScale";
  public static final String GAUGE_SCALE = "gaugeScale";
  public static final String DIAMETER = "diameter";
  public static final String SUPPORT_A = "supportA";
  public static final String SUPPORT_B = "supportB";
  public static final String LOAD = "load";
  public static final String GAUGE = "gauge";
  public static final String FRAME = "frame";
  public static final String RATIO = "ratio";

  /** The modulus of a splice; only for a shaft that is spliced already. */
  public static final String SPLICE = "splice";

  private BudgetSource() {}

  /** A source as a person would name it. */
  public static String inWords(String source) {
    return switch (source) {
      case LINE -> "the scatter of the readings";
      case LOAD_SCALE -> "the load cell's calibration";
      case GAUGE_SCALE -> "the gauge's calibration";
      case DIAMETER -> "the diameters";
      case SUPPORT_A -> "the place of support A";
      case SUPPORT_B -> "the place of support B";
      case LOAD -> "the place of the load";
      case GAUGE -> "the place of the gauge";
      case FRAME -> "the give of the frame";
      case RATIO -> "the ratio of modulus to shear modulus";
      case SPLICE -> "the modulus of the splice wood";
      default -> source;
    };
  }
}
