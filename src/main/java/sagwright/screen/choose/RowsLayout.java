package sagwright.screen.choose;

/**
 * Which rows are seen, and where: those that may serve above, those that cannot below, each
 * scrolled so far that the row with the focus is seen. Units of zoom 1.
 *
 * @param first the first of those that may serve that is seen
 * @param shown how many of them are seen
 * @param firstCannot the first of those that cannot
 * @param shownCannot how many of them are seen
 * @param headingPx baseline of the heading over those that cannot; NaN where there are none
 */
record RowsLayout(int first, int shown, int firstCannot, int shownCannot, double headingPx) {
  /** Where the axis over the rows lies. */
  static final double AXIS = 56;

  static final double PITCH = 34;
  static final double CANNOT_PITCH = 24;

  /** The ask is seen also where nothing may serve it. */
  static final double LEAST_PLANK = 14;

  private static final double HEADING = 36;
  private static final double MORE = 20;
  private static final int LEAST_CANNOT = 3;

  /**
   * @param serving how many may serve
   * @param cannot how many cannot
   * @param focus the row with the focus, counted through both
   * @param height of the whole list, its axis included
   */
  static RowsLayout of(int serving, int cannot, int focus, double height) {
    double room = height - AXIS;
    double all = serving * PITCH;
    double allCannot = cannot == 0 ? 0 : HEADING + cannot * CANNOT_PITCH;
    double forCannot = allCannot;
    double forServing = all;
    if (all + allCannot > room) {
      double least = Math.min(allCannot, HEADING + LEAST_CANNOT * CANNOT_PITCH + MORE);
      forCannot = Math.min(allCannot, Math.max(least, room - all));
      forServing = Math.min(all, room - forCannot);
    }
    int shown = fitting(serving, forServing, PITCH);
    int shownCannot = fitting(cannot, forCannot - HEADING, CANNOT_PITCH);
    int first = focus < serving ? scrolled(focus, shown) : 0;
    int firstCannot = focus >= serving ? scrolled(focus - serving, shownCannot) : 0;
    double end = AXIS + Math.max(LEAST_PLANK, shown * PITCH + (shown < serving ? MORE : 0));
    return new RowsLayout(
        first, shown, firstCannot, shownCannot, cannot == 0 ? Double.NaN : end + 26);
  }

  /** How many rows fit, a line for "and more" kept free where not all do. */
  private static int fitting(int rows, double room, double pitch) {
    if (rows * pitch <= room + 0.5) {
      return rows;
    }
    return Math.min(rows, (int) Math.max(1, Math.floor((room - MORE) / pitch)));
  }

  private static int scrolled(int focus, int shown) {
    return Math.max(0, focus - shown + 1);
  }

  /** Centre of a row that may serve. */
  double centreOf(int row) {
    return AXIS + (row - first + 0.5) * PITCH;
  }

  /** Centre of a row that cannot serve, counted among those. */
  double centreOfCannot(int row) {
    return headingPx + 10 + (row - firstCannot + 0.5) * CANNOT_PITCH;
  }

  double servingEnd() {
    return AXIS + shown * PITCH;
  }

  /** The row at a height, counted through both; −1 for none. */
  int rowAt(double y, int serving) {
    int row = first + (int) Math.floor((y - AXIS) / PITCH);
    if (y >= AXIS && row < first + shown) {
      return row;
    }
    int cannot = firstCannot + (int) Math.floor((y - headingPx - 10) / CANNOT_PITCH);
    boolean isOne = y >= headingPx + 10 && cannot < firstCannot + shownCannot;
    return isOne ? serving + cannot : -1;
  }
}
