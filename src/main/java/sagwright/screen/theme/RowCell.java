package sagwright.screen.theme;

import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.border.Border;
import javax.swing.table.DefaultTableCellRenderer;

/** A cell of a {@link RowTable}; the first column is what a row is called: bold. */
final class RowCell<R> extends DefaultTableCellRenderer {
  private static final long serialVersionUID = 1L;

  /** A picked row is told by a bar at its left, not by its colour alone. */
  static final int MARK = 4;

  /** Rooms beside a text at zoom 1; heads stand over their cells by the same. */
  static final int ROOM_LEFT = 14;

  static final int ROOM_LEFT_OF_FIRST = 8;
  static final int ROOM_RIGHT = 8;

  private final transient List<RowTable.Column<R>> columns;

  RowCell(List<RowTable.Column<R>> columns, int alignment) {
    this.columns = columns;
    setHorizontalAlignment(alignment);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    RowTable.Column<R> at = columns.get(column);
    Object shown = value;
    if (at.isFigures()) {
      shown = value == null ? "–" : at.text().apply((Double) value);
    }
    super.getTableCellRendererComponent(table, shown, selected, false, row, column);
    if (column == 0) {
      setFont(Theme.style().lettering().semiBold(table.getFont().getSize2D() * 1.15));
    }
    Border room =
        BorderFactory.createEmptyBorder(
            0, column == 0 ? ROOM_LEFT_OF_FIRST : ROOM_LEFT, 0, ROOM_RIGHT);
    boolean marked = column == 0 && selected;
    Border mark =
        BorderFactory.createMatteBorder(
            0, MARK, 0, 0, marked ? Theme.style().palette().brass() : table.getBackground());
    setBorder(column == 0 ? BorderFactory.createCompoundBorder(mark, room) : room);
    return this;
  }
}
