package sagwright.screen.theme;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import javax.accessibility.AccessibleContext;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/**
 * Lines of figures to be typed one after the other. Enter goes to the next field, a new line
 * appears when the last is begun, Enter on an empty line ends the list. A column may be given by
 * the program, another passed over by Enter: then one figure and Enter are all that a line takes.
 */
public final class FieldGrid extends JPanel implements Scrollable {
  private static final long serialVersionUID = 1L;
  private static final int FIELD_HEIGHT = 44;

  private final List<String> columns;
  private final List<List<JTextField>> lines = new ArrayList<>();
  private final transient Runnable ended;
  private final transient Runnable changed;
  private boolean filling;
  private transient IntFunction<String> given; // of the first column; null where it is typed
  private int enterPassesFrom;
  private int enterBegins;

  /**
   * @param columns the heads, with their units
   * @param least lines that are there from the start
   * @param ended Enter was pressed on an empty line
   * @param changed a text has changed
   */
  public FieldGrid(String name, List<String> columns, int least, Runnable ended, Runnable changed) {
    super(
        new MigLayout(
            "insets 0, gap 10 2, wrap " + (columns.size() + 1),
            "[16!]6" + "[grow,fill,sizegroup f]".repeat(columns.size())));
    this.columns = List.copyOf(columns);
    this.enterPassesFrom = columns.size();
    this.ended = ended;
    this.changed = changed;
    setName(name);
    setFocusTraversalPolicyProvider(true); // column by column, not row by row across the page
    setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
    add(Text.note(""));
    columns.forEach(head -> add(Text.note(head)));
    for (int i = 0; i < least; i++) {
      addLine();
    }
  }

  private void addLine() {
    int number = lines.size() + 1;
    List<JTextField> line = new ArrayList<>();
    lines.add(line);
    add(Text.note(String.valueOf(number)), "alignx right");
    for (int column = 0; column < columns.size(); column++) {
      JTextField field = new JTextField(5);
      field.setName(getName() + "." + number + "." + (column + 1));
      field.setHorizontalAlignment(SwingConstants.TRAILING);
      field.putClientProperty(
          AccessibleContext.ACCESSIBLE_NAME_PROPERTY, columns.get(column) + ", line " + number);
      int at = column;
      field.addActionListener(e -> enter(line, at));
      field.getDocument().addDocumentListener(new OnTyping(() -> typed(line)));
      line.add(field);
      add(field, "hmin " + FIELD_HEIGHT);
    }
    give(number - 1);
    revalidate();
  }

  /**
   * The first column is given by the program, and its fields are not typed into.
   *
   * @param textOfLine of a line counted from 0, null behind the last; null: it is typed again
   */
  public void giveFirstColumn(IntFunction<String> textOfLine) {
    given = textOfLine;
    filling = true;
    for (int i = 0; i < lines.size(); i++) {
      give(i);
    }
    filling = false;
    changed.run();
  }

  private void give(int at) {
    JTextField first = lines.get(at).get(0);
    boolean wasGiven = !first.isEnabled();
    if (given != null) {
      String text = given.apply(at);
      first.setText(text == null ? "" : text);
      lines.get(at).forEach(field -> field.setEnabled(text != null));
      first.setEnabled(false);
    } else if (wasGiven) {
      lines.get(at).forEach(field -> field.setEnabled(true));
      if (isEmpty(lines.get(at).subList(1, columns.size()))) {
        first.setText("");
      }
    }
  }

  /** From a column on, Enter goes to the next line; Tab still leads to what is passed over. */
  public void enterPassesFrom(int column) {
    enterPassesFrom = column;
  }

  /** The column with which Enter begins a line; Tab and Shift Tab lead to those before it. */
  public void enterBeginsWith(int column) {
    enterBegins = column;
  }

  private int firstTyped() {
    return given == null ? enterBegins : 1;
  }

  private void enter(List<JTextField> line, int column) {
    if (column == firstTyped() && isEmpty(line)) {
      ended.run();
    } else if (column + 1 < enterPassesFrom) {
      focus(line.get(column + 1));
    } else {
      int next = lines.indexOf(line) + 1;
      if (next < lines.size() && lines.get(next).get(firstTyped()).isEnabled()) {
        focus(lines.get(next).get(firstTyped()));
      } else {
        ended.run();
      }
    }
  }

  private void focus(JTextField field) {
    field.requestFocusInWindow();
    scrollRectToVisible(field.getBounds());
  }

  /** What the program has given does not count. */
  private static boolean isEmpty(List<JTextField> line) {
    return line.stream()
        .filter(field -> field.isEnabled())
        .allMatch(field -> field.getText().isBlank());
  }

  /** A line that is not empty, and its number counted from 1. */
  public record Line(int number, List<String> texts) {}

  /** What is typed: each line that is not empty. */
  public List<Line> typed() {
    List<Line> typed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (!isEmpty(lines.get(i))) {
        typed.add(new Line(i + 1, lines.get(i).stream().map(f -> f.getText().trim()).toList()));
      }
    }
    return typed;
  }

  /** Replaces all that is typed. */
  public void fill(List<List<String>> texts) {
    filling = true;
    for (int i = 0; i < Math.max(lines.size(), texts.size() + 1); i++) {
      if (i == lines.size()) {
        addLine();
      }
      for (int column = 0; column < columns.size(); column++) {
        lines.get(i).get(column).setText(i < texts.size() ? texts.get(i).get(column) : "");
      }
      give(i);
    }
    filling = false;
    changed.run();
  }

  /**
   * Goes to the field that a complaint is about, its text picked to be typed over.
   *
   * @param field ends with the line's number and the column's first word: "pair 3, dial"
   * @return whether there is one
   */
  public boolean focusOn(String field) {
    for (int i = 0; i < lines.size(); i++) {
      for (int column = 0; column < columns.size(); column++) {
        if (field.endsWith(" " + (i + 1) + ", " + columns.get(column).split("[, ]")[0])) {
          focus(lines.get(i).get(column));
          lines.get(i).get(column).selectAll();
          return true;
        }
      }
    }
    return false;
  }

  public void focusFirst() {
    lines.get(0).get(firstTyped()).requestFocusInWindow();
  }

  private void typed(List<JTextField> line) {
    if (filling) {
      return;
    }
    boolean inLast = lines.get(lines.size() - 1).equals(line);
    if (inLast && !isEmpty(line)) {
      double zoom = line.get(0).getFont().getSize2D() / Theme.TEXT_SIZE;
      addLine();
      Zoom.apply(this, zoom);
    }
    changed.run();
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return FIELD_HEIGHT;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return visible.height - FIELD_HEIGHT;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
