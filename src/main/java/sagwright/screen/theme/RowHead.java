package sagwright.screen.theme;

import java.awt.Component;
import java.util.List;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellRenderer;

/** The head of a column of a {@link RowTable}: its name, and its unit on a line of its own. */
final class RowHead<R> implements TableCellRenderer {
  private static final int HEIGHT = 28;
  private static final int HEIGHT_OF_TWO_LINES = 40;

  private final List<RowTable.Column<R>> columns;
  private final TableCellRenderer plain;

  RowHead(List<RowTable.Column<R>> columns, TableCellRenderer plain) {
    this.columns = columns;
    this.plain = plain;
  }

  static <R> int heightAtZoomOne(List<RowTable.Column<R>> columns) {
    return columns.stream().anyMatch(column -> column.title().contains(", "))
        ? HEIGHT_OF_TWO_LINES
        : HEIGHT;
  }

  /** A unit behind a comma goes under its name. */
  private static String inTwoLines(String title, boolean figures) {
    int comma = title.indexOf(", ");
    return comma < 0
        ? title
        : "<html><div align="
            + (figures ? "right" : "left")
            + ">"
            + title.substring(0, comma)
            + "<br>"
            + title.substring(comma + 2)
            + "</div></html>";
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    Component head =
        plain.getTableCellRendererComponent(table, value, selected, focused, row, column);
    if (head instanceof JLabel label) {
      boolean figures = columns.get(column).isFigures();
      label.setHorizontalAlignment(figures ? SwingConstants.TRAILING : SwingConstants.LEADING);
      int left = column == 0 ? RowCell.MARK + RowCell.ROOM_LEFT_OF_FIRST : RowCell.ROOM_LEFT;
      label.setBorder(BorderFactory.createEmptyBorder(0, left, 0, RowCell.ROOM_RIGHT));
      label.setText(inTwoLines(String.valueOf(value), figures));
      label
          .getAccessibleContext()
          .setAccessibleName(String.valueOf(value).toLowerCase(Locale.ROOT));
    }
    return head;
  }
}
