package sagwright.example;

/**
 * A blank of the example workshop. Days are counted back from the day of the making.
 *
 * @param stage that it has come to
 * @param boughtDaysAgo when it was bought as a square
 * @param behindDays how many days its lot keeps the bench busy before its turn comes
 * @param stageDaysAgo when it came to its stage, for one that an order has waited for; else 0
 */
record ExampleBlank(
    ExampleWood wood, Stage stage, int boughtDaysAgo, int behindDays, int stageDaysAgo) {
  /** From planing to the finished cue: splice, glue and oil want their time. */
  private static final int FINISHING_DAYS = 45;

  String tag() {
    return wood.tag();
  }

  boolean isForAnOrder() {
    return stage == Stage.PLANED || stage == Stage.FINISHED_CUE;
  }

  /** When it came to a stage. */
  int daysAgo(Stage reached) {
    if (reached == Stage.FINISHED_CUE) {
      return stageDaysAgo;
    }
    if (reached == Stage.PLANED) {
      return stage == Stage.PLANED ? stageDaysAgo : stageDaysAgo + FINISHING_DAYS;
    }
    return Math.max(1, boughtDaysAgo - reached.daysAfterBought());
  }

  /** When it was tested at a stage for the first time. */
  int testedDaysAgo(Stage at) {
    return Math.max(1, daysAgo(at) - 2 - (isForAnOrder() ? 0 : behindDays));
  }
}
