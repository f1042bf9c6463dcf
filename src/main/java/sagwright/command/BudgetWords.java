package sagwright.command;

import sagwright.modulus.BudgetSource;

/** The sources of a modulus's uncertainty as a person would name them. */
final class BudgetWords {
  private BudgetWords() {}

  static String of(String source) {
    return switch (source) {
      case BudgetSource.LINE -> "the scatter of the readings";
      case BudgetSource.LOAD_SCALE -> "the load cell's calibration";
      case BudgetSource.GAUGE_SCALE -> "the gauge's calibration";
      case BudgetSource.DIAMETER -> "the diameters";
      case BudgetSource.SUPPORT_A -> "the place of support A";
      case BudgetSource.SUPPORT_B -> "the place of support B";
      case BudgetSource.LOAD -> "the place of the load";
      case BudgetSource.GAUGE -> "the place of the gauge";
      case BudgetSource.FRAME -> "the give of the frame";
      case BudgetSource.RATIO -> "the ratio of modulus to shear modulus";
      case BudgetSource.SPLICE -> "the modulus of the splice wood";
      default -> source;
    };
  }
}
