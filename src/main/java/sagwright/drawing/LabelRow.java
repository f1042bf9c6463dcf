package sagwright.drawing;

/** Labels in one row, each over its place as far as they do not touch and are all seen. */
final class LabelRow {
  static final double GAP = 16;

  private LabelRow() {}

  /** A label: its place, and how wide it is. */
  record Label(double atPx, double width) {}

  /**
   * Where each begins.
   *
   * @param labels by their place, rising
   * @param fromPx of the row
   * @param toPx of the row
   */
  static double[] begins(Label[] labels, double fromPx, double toPx) {
    double[] from = new double[labels.length];
    double free = fromPx;
    for (int i = 0; i < from.length; i++) {
      from[i] = Math.max(free, labels[i].atPx() - labels[i].width() / 2);
      free = from[i] + labels[i].width() + GAP;
    }
    double end = toPx;
    for (int i = from.length - 1; i >= 0; i--) {
      from[i] = Math.min(from[i], end - labels[i].width());
      end = from[i] - GAP;
    }
    return from;
  }
}
