package sagwright.screen.choose;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import sagwright.drawing.Palette;
import sagwright.drawing.PickLine;
import sagwright.drawing.StiffnessLine;
import sagwright.drawing.StiffnessMark;
import sagwright.drawing.StiffnessScale;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.grade.Ask;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/**
 * All blanks for one order, best first, their stiffness lines on one plank; those that cannot serve
 * apart. Only the rows that are seen are drawn, however many there are.
 */
final class RowsPicture extends Picture {
  private static final long serialVersionUID = 1L;

  /** Beyond so many ask's widths from the ask a shaft is told by an arrow: the line stays long. */
  private static final double FARTHEST = 2.5;

  /** The line has room for so many of the best. */
  private static final int BEST = 12;

  private static final double LEAST_TAG = 14;

  private transient ChooseView view = ChooseView.reading(ShopUnits.METRIC);
  private transient List<String> picked = List.of();
  private int focus;

  /**
   * @param toRow a row was clicked
   * @param by the wheel was turned by so many rows
   */
  RowsPicture(IntConsumer toRow, IntConsumer by) {
    super("choose.rows", new Dimension(1000, 330));
    setFocusable(true);
    MouseAdapter mouse =
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
            int row = layoutNow().rowAt(inPicture(e.getY()), view.serving().size());
            if (row >= 0 && row < view.rowCount()) {
              toRow.accept(row);
            }
          }

          @Override
          public void mouseWheelMoved(MouseWheelEvent e) {
            by.accept(e.getWheelRotation());
          }
        };
    addMouseListener(mouse);
    addMouseWheelListener(mouse);
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /**
   * @param tags those that are compared, the first pick first
   * @param focusRow the row with the focus, counted through both lists
   */
  void show(ChooseView next, List<String> tags, int focusRow) {
    view = next;
    picked = tags;
    focus = focusRow;
    repaint();
  }

  private RowsLayout layoutNow() {
    return RowsLayout.of(
        view.serving().size(), view.cannot().size(), focus, inPicture(getHeight()));
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    Style style = Theme.style();
    if (view.order() == null || view.rowCount() == 0) {
      TextLine.of(ChooseWords.nextStep(view), style.lettering().regular(20), style.palette().ink())
          .fromLeft(g, 0, RowsLayout.AXIS + 40);
      return;
    }
    RowsLayout rows = layoutNow();
    Columns columns = new Columns(area.getWidth());
    RowCells cells = new RowCells(style, view, columns);
    StiffnessScale scale = scale(columns);
    cells.head(g, rows);
    strips(g, area, rows, style.palette());
    line(g, rows, scale, style);
    cells.serving(g, rows);
    for (int i = rows.first(); i < rows.first() + rows.shown(); i++) {
      Row row = view.serving().get(i);
      mark(g, scale, row, rows.centreOf(i), style);
      name(g, i, row, rows.centreOf(i), style);
    }
    cells.rankedBy(g, rows);
    cells.cannot(g, rows);
    for (int i = rows.firstCannot(); i < rows.firstCannot() + rows.shownCannot(); i++) {
      mark(g, scale, view.cannot().get(i), rows.centreOfCannot(i), style);
    }
    focusRing(g, area, rows, style.palette());
  }

  private StiffnessScale scale(Columns columns) {
    Ask ask = ask();
    double far = FARTHEST * (ask.highestNPerMm() - ask.lowestNPerMm());
    List<StiffnessMark> marks = new ArrayList<>();
    for (Row row : view.serving().subList(0, Math.min(BEST, view.serving().size()))) {
      double k = row.stiffnessNPerMm().value();
      double half = row.stiffnessNPerMm().halfWidth95();
      if (k - half > ask.lowestNPerMm() - far && k + half < ask.highestNPerMm() + far) {
        marks.add(new StiffnessMark(k, half, false));
      }
    }
    return StiffnessScale.around(ask, marks, Columns.LINE_FROM, columns.lineTo());
  }

  private Ask ask() {
    return view.order().ask();
  }

  private void strips(Graphics2D g, Rectangle2D area, RowsLayout rows, Palette p) {
    for (int i = rows.first(); i < rows.first() + rows.shown(); i++) {
      double top = rows.centreOf(i) - RowsLayout.PITCH / 2;
      if (picked.contains(view.serving().get(i).tag())) {
        g.setColor(p.pick());
        g.fill(new Rectangle2D.Double(0, top, area.getWidth(), RowsLayout.PITCH));
      }
      g.setColor(p.hairline());
      g.setStroke(Style.HAIR);
      g.draw(new Line2D.Double(0, top + RowsLayout.PITCH, area.getWidth(), top + RowsLayout.PITCH));
    }
  }

  /** One plank through all rows that may serve; its edges dotted on through those that cannot. */
  private void line(Graphics2D g, RowsLayout rows, StiffnessScale scale, Style style) {
    StiffnessLine painter = new StiffnessLine(style);
    double end = Math.max(rows.servingEnd(), RowsLayout.AXIS + RowsLayout.LEAST_PLANK);
    painter.plank(g, scale, ask(), RowsLayout.AXIS, end);
    painter.axis(g, scale, RowsLayout.AXIS);
    painter.ticks(g, scale, RowsLayout.AXIS, RowsLayout.AXIS - 10);
    if (view.words() != null) {
      painter.words(g, scale, view.words(), Double.NaN, RowsLayout.AXIS - 34);
    }
    if (rows.shownCannot() > 0) {
      g.setColor(style.palette().secondInk());
      g.setStroke(Style.DOTTED);
      double to = rows.centreOfCannot(rows.firstCannot() + rows.shownCannot() - 1) + 12;
      for (double edge : new double[] {ask().lowestNPerMm(), ask().highestNPerMm()}) {
        double x = pxOf(scale, edge);
        g.draw(new Line2D.Double(x, end, x, to));
      }
    }
  }

  private static double pxOf(StiffnessScale scale, double nPerMm) {
    return scale.leftPx()
        + (nPerMm - scale.fromNPerMm())
            * (scale.rightPx() - scale.leftPx())
            / (scale.toNPerMm() - scale.fromNPerMm());
  }

  private void mark(Graphics2D g, StiffnessScale scale, Row row, double y, Style style) {
    if (row.stiffnessNPerMm() == null) {
      return;
    }
    Palette p = style.palette();
    double k = row.stiffnessNPerMm().value();
    boolean isServing = row.reason() == null;
    if (isServing) {
      g.setColor(p.secondInk());
      g.setStroke(new BasicStroke(0.8f));
      g.draw(new Line2D.Double(scale.leftPx(), y, scale.rightPx(), y));
    }
    if (k < scale.fromNPerMm() || k > scale.toNPerMm()) {
      boolean isSoft = k < scale.fromNPerMm();
      String figure = Figures.value(k, row.stiffnessNPerMm().halfWidth95());
      TextLine text = TextLine.of(figure, style.lettering().regular(14), p.ink());
      if (isSoft) {
        text.fromLeft(g, scale.leftPx() + 14, y + 5);
        arrow(g, scale.leftPx(), y, 9);
      } else {
        text.toRight(g, scale.rightPx() - 14, y + 5);
        arrow(g, scale.rightPx(), y, -9);
      }
      return;
    }
    new StiffnessLine(style)
        .mark(g, scale, new StiffnessMark(k, row.stiffnessNPerMm().halfWidth95(), !isServing), y);
  }

  /** Points off the line. */
  private static void arrow(Graphics2D g, double tipPx, double y, double lengthPx) {
    Path2D arrow = new Path2D.Double();
    arrow.moveTo(tipPx, y);
    arrow.lineTo(tipPx + lengthPx, y - 5);
    arrow.lineTo(tipPx + lengthPx, y + 5);
    arrow.closePath();
    g.fill(arrow);
  }

  /** The key that picks the row, its line where it is picked, its tag. */
  private void name(Graphics2D g, int place, Row row, double y, Style style) {
    Palette p = style.palette();
    if (place < 9) {
      TextLine.of(Integer.toString(place + 1), style.lettering().bold(14), p.brassText())
          .fromLeft(g, Columns.NUMBER, y + 5);
    }
    int pick = picked.indexOf(row.tag());
    if (pick >= 0) {
      PickLine.of(pick).sample(g, style, Columns.SAMPLE, y, Columns.SAMPLE_LENGTH);
    }
    double size = 20;
    TextLine tag = tag(row.tag(), pick >= 0, size, style);
    while (tag.width(g) > Columns.TAG_WIDTH && size > LEAST_TAG) {
      size -= 2;
      tag = tag(row.tag(), pick >= 0, size, style);
    }
    if (tag.width(g) > Columns.TAG_WIDTH) {
      Font least = style.lettering().regular(LEAST_TAG);
      tag = tag(TextLine.shortened(g, row.tag(), least, Columns.TAG_WIDTH), false, size, style);
    }
    tag.toRight(g, Columns.TAG_ENDS, y + 7);
  }

  private static TextLine tag(String tag, boolean isPicked, double size, Style style) {
    Font font = isPicked ? style.lettering().bold(size) : style.lettering().regular(size);
    return TextLine.of(tag, font, style.palette().ink());
  }

  private void focusRing(Graphics2D g, Rectangle2D area, RowsLayout rows, Palette p) {
    if (!isFocusOwner() || focus >= view.rowCount()) {
      return;
    }
    boolean isServing = focus < view.serving().size();
    double pitch = isServing ? RowsLayout.PITCH : RowsLayout.CANNOT_PITCH;
    double centre =
        isServing ? rows.centreOf(focus) : rows.centreOfCannot(focus - view.serving().size());
    g.setColor(p.brass());
    g.setStroke(new BasicStroke(2.2f));
    g.draw(
        new RoundRectangle2D.Double(
            1, centre - pitch / 2 + 1, area.getWidth() - 2, pitch - 2, 8, 8));
  }

  @Override
  protected String describe() {
    String next = ChooseWords.nextStep(view);
    if (view.order() == null || focus >= view.rowCount()) {
      return next;
    }
    return next + (next.isEmpty() ? "" : " ") + ChooseWords.row(view, focus, picked);
  }
}
