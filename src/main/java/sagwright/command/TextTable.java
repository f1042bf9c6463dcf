package sagwright.command;

/** A few labelled figures under a title, for a terminal. */
final class TextTable {
  private static final int LABEL_WIDTH = 26;
  private static final int FIGURE_WIDTH = 20;

  private final StringBuilder text = new StringBuilder();

  void title(String title, String beside) {
    text.append(padded(title, LABEL_WIDTH + FIGURE_WIDTH - beside.length() + 2))
        .append(beside)
        .append(System.lineSeparator());
  }

  void row(String label, String figure, String unit) {
    text.append("  ")
        .append(padded(label, LABEL_WIDTH))
        .append(" ".repeat(Math.max(0, FIGURE_WIDTH - figure.length())))
        .append(figure)
        .append(' ')
        .append(unit)
        .append(System.lineSeparator());
  }

  void note(String line) {
    text.append("  ").append(line).append(System.lineSeparator());
  }

  private static String padded(String s, int width) {
    return s + " ".repeat(Math.max(1, width - s.length()));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
