package sagwright.screen.theme;

import java.awt.AWTKeyStroke;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableRowSorter;
import sagwright.quantity.Figures;

/**
 * A table of immutable rows: sorted by a click on any head or by keys, filtered as is typed, opened
 * by Enter or a double click. Figures stand right, on their decimal point.
 *
 * @param <R> a row
 */
public final class RowTable<R> extends JTable implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;

  /**
   * A column.
   *
   * @param title its head; a second line, behind a comma, is the unit
   * @param width at zoom 1
   * @param text how a figure is written; null for a column of words
   * @param value a String or, for figures, a Double, null where there is none
   */
  public record Column<R>(
      String title, int width, DoubleFunction<String> text, Function<R, Comparable<?>> value) {
    /** A column of words. */
    public static <R> Column<R> words(String title, int width, Function<R, String> value) {
      return new Column<>(title, width, null, value::apply);
    }

    /** A column of figures with fixed decimals. */
    public static <R> Column<R> figures(
        String title, int width, int decimals, Function<R, Double> value) {
      return new Column<>(title, width, v -> Figures.rounded(v, decimals), value::apply);
    }

    /** A column of figures that are written in a way of their own. */
    public static <R> Column<R> written(
        String title, int width, DoubleFunction<String> text, Function<R, Double> value) {
      return new Column<>(title, width, text, value::apply);
    }

    boolean isFigures() {
      return text != null;
    }
  }

  private final Rows<R> rows;
  private final transient TableRowSorter<Rows<R>> sorter;

  public RowTable(String name, List<Column<R>> columns) {
    this(name, new Rows<>(columns));
  }

  private RowTable(String name, Rows<R> rows) {
    super(rows);
    this.rows = rows;
    this.sorter = new TableRowSorter<>(rows);
    setName(name);
    for (int i = 0; i < rows.columns.size(); i++) {
      if (!rows.columns.get(i).isFigures()) {
        sorter.setComparator(i, Comparator.<String>naturalOrder());
      }
    }
    setRowSorter(sorter);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    setFillsViewportHeight(true);
    setIntercellSpacing(new Dimension(0, 1));
    getTableHeader().setReorderingAllowed(false);
    getTableHeader()
        .setDefaultRenderer(new RowHead<>(rows.columns, getTableHeader().getDefaultRenderer()));
    getTableHeader().setFont(Theme.style().lettering().regular(14));
    setDefaultRenderer(String.class, new RowCell<>(rows.columns, SwingConstants.LEADING));
    setDefaultRenderer(Double.class, new RowCell<>(rows.columns, SwingConstants.TRAILING));
    sizeColumns(1); // until the window is resized nobody zooms it
    // function keys open pages, Tab leaves the table
    for (int key = KeyEvent.VK_F1; key <= KeyEvent.VK_F12; key++) {
      getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key, 0), "none");
    }
    setFocusTraversalKeys(
        KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS,
        Set.of(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0)));
    setFocusTraversalKeys(
        KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
        Set.of(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK)));
  }

  /** What Enter and a double click do with a row. */
  public void whenOpened(Consumer<R> open) {
    Keys.bind(
        this,
        WHEN_ANCESTOR_OF_FOCUSED_COMPONENT,
        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0),
        "open",
        () -> openSelected(open));
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            if (e.getClickCount() == 2) {
              openSelected(open);
            }
          }
        });
  }

  private void openSelected(Consumer<R> open) {
    R row = selected();
    if (row != null) {
      open.accept(row);
    }
  }

  /** Shows other rows; the selection stays on the row that is the same by a key. */
  public void show(List<R> next, Function<R, ?> key) {
    R before = selected();
    rows.show(next);
    select(0);
    if (before != null) {
      Object selected = key.apply(before);
      select(row -> key.apply(row).equals(selected));
    }
  }

  /** Selects a row that is seen; where there is none such, the selection stays. */
  public void select(Predicate<R> wanted) {
    for (int i = 0; i < rows.rows.size(); i++) {
      int at = wanted.test(rows.rows.get(i)) ? convertRowIndexToView(i) : -1;
      if (at >= 0) {
        select(at);
        return;
      }
    }
  }

  public void filter(Predicate<R> shows) {
    sorter.setRowFilter(
        new RowFilter<Rows<R>, Integer>() {
          @Override
          public boolean include(Entry<? extends Rows<R>, ? extends Integer> entry) {
            return shows.test(rows.rows.get(entry.getIdentifier()));
          }
        });
    select(0);
  }

  /** The selected row, null for none. */
  public R selected() {
    int row = getSelectedRow();
    return row < 0 ? null : rows.rows.get(convertRowIndexToModel(row));
  }

  /** Moves the selection by so many rows. */
  public void move(int by) {
    select(Math.max(0, Math.min(getRowCount() - 1, getSelectedRow() + by)));
  }

  /**
   * Sorts by another column, the same way round.
   *
   * @param by 1 for the next, −1 for the one before; the last is followed by the first
   */
  public void sortByNext(int by) {
    SortKey now = sortKey();
    int column = now == null ? Math.min(by, 0) : now.getColumn() + by;
    sort(
        Math.floorMod(column, getColumnCount()),
        now == null ? SortOrder.ASCENDING : now.getSortOrder());
  }

  /** Sorts by the same column, from the other end. */
  public void sortTheOtherWay() {
    SortKey now = sortKey();
    boolean isFalling = now != null && now.getSortOrder() == SortOrder.DESCENDING;
    sort(now == null ? 0 : now.getColumn(), isFalling ? SortOrder.ASCENDING : SortOrder.DESCENDING);
  }

  private void sort(int column, SortOrder order) {
    sorter.setSortKeys(List.of(new SortKey(column, order)));
    select(0);
  }

  private SortKey sortKey() {
    return sorter.getSortKeys().isEmpty() ? null : sorter.getSortKeys().get(0);
  }

  private void select(int row) {
    if (row < getRowCount()) {
      setRowSelectionInterval(row, row);
      scrollRectToVisible(getCellRect(row, 0, true));
    }
  }

  @Override
  public void zoomTo(double zoom) {
    sizeColumns(zoom);
  }

  private void sizeColumns(double zoom) {
    for (int i = 0; i < rows.columns.size(); i++) {
      getColumnModel()
          .getColumn(i)
          .setPreferredWidth((int) Math.round(rows.columns.get(i).width() * zoom));
    }
    int height = (int) Math.round(RowHead.heightAtZoomOne(rows.columns) * zoom);
    getTableHeader().setPreferredSize(new Dimension(1, height)); // the width is the table's
  }

  @Override
  public boolean isCellEditable(int row, int column) {
    return false;
  }

  private static final class Rows<R> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<Column<R>> columns;
    private transient List<R> rows = List.of();

    Rows(List<Column<R>> columns) {
      this.columns = List.copyOf(columns);
    }

    void show(List<R> next) {
      rows = List.copyOf(next);
      fireTableDataChanged();
    }

    @Override
    public int getRowCount() {
      return rows.size();
    }

    @Override
    public int getColumnCount() {
      return columns.size();
    }

    @Override
    public String getColumnName(int column) {
      return columns.get(column).title();
    }

    @Override
    public Class<?> getColumnClass(int column) {
      return columns.get(column).isFigures() ? Double.class : String.class;
    }

    @Override
    public Object getValueAt(int row, int column) {
      return columns.get(column).value().apply(rows.get(row));
    }
  }
}
