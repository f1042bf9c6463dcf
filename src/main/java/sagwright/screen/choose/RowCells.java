package sagwright.screen.choose;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.WoodWords;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.choose.ChooseView.Seen;
import sagwright.screen.choose.ChooseView.ToCome;

/** The words and figures of the list, beside its stiffness lines. */
final class RowCells {
  private static final double TEXT = 16;
  private static final double SMALL = 14;
  private static final double MPA_PER_GPA = 1000;
  private static final int USUAL_GPA_DECIMALS = 2;

  private final Palette palette;
  private final Lettering lettering;
  private final ChooseView view;
  private final Columns columns;

  RowCells(Style style, ChooseView view, Columns columns) {
    this.palette = style.palette();
    this.lettering = style.lettering();
    this.view = view;
    this.columns = columns;
  }

  void head(Graphics2D g, RowsLayout rows) {
    double upper = RowsLayout.AXIS - 34;
    double lower = RowsLayout.AXIS - 10;
    String from = rows.first() == 0 ? "best first" : "from no. " + (rows.first() + 1) + " on";
    small(from).fromLeft(g, 0, upper);
    small("whisker 95 %").fromLeft(g, 0, lower);
    if (view.serving().isEmpty()) {
      return;
    }
    small("verdict").fromLeft(g, columns.verdict(), upper);
    ends(g, columns.chanceEnds(), "chance", "in 100");
    ends(g, columns.modulusEnds(), "modulus", "GPa");
    ends(g, columns.spareEnds(), "spare", "mm");
    ends(g, columns.massEnds(), "weight", view.units().mass().symbol());
    ends(g, columns.balanceEnds(), "balance", view.units().length().symbol());
    small("grain").fromLeft(g, columns.grain(), upper);
    small("lines " + WoodWords.per(view.units())).fromLeft(g, columns.grain(), lower);
    small("seasoning").fromLeft(g, columns.seasoning(), upper);
  }

  private TextLine small(String words) {
    return TextLine.of(words, lettering.regular(SMALL), palette.secondInk());
  }

  private void ends(Graphics2D g, double x, String name, String unit) {
    small(name).toRight(g, x, RowsLayout.AXIS - 34);
    small(unit).toRight(g, x, RowsLayout.AXIS - 10);
  }

  void serving(Graphics2D g, RowsLayout rows) {
    List<Row> seen = view.serving().subList(rows.first(), rows.first() + rows.shown());
    column(g, rows, seen, columns.modulusEnds(), modulus(view.serving()));
    column(g, rows, seen, columns.spareEnds(), r -> Figures.rounded(r.cut().leastSpareMm(), 2));
    for (int i = 0; i < seen.size(); i++) {
      Row row = seen.get(i);
      double baseline = rows.centreOf(rows.first() + i) + 6;
      boolean meets = row.verdict().equals("meets");
      boolean isPromised = row.tag().equals(view.order().promisedTag());
      Font word = meets || isPromised ? lettering.bold(TEXT) : lettering.regular(TEXT);
      TextLine.of(isPromised ? "promised" : row.verdict(), word, palette.ink())
          .fromLeft(g, columns.verdict(), baseline);
      chance(g, row, baseline);
      toCome(g, row.mass(), view.units().mass(), new Point2D.Double(columns.massEnds(), baseline));
      toCome(
          g,
          row.balance(),
          view.units().length(),
          new Point2D.Double(columns.balanceEnds(), baseline));
      seen(g, row.seen(), baseline);
    }
    more(g, view.serving().size() - rows.first() - rows.shown(), rows.servingEnd() + 15);
  }

  private void seen(Graphics2D g, Seen seen, double baseline) {
    Font font = lettering.regular(TEXT);
    String grain = seen.grain().isEmpty() ? "–" : seen.grain();
    double room = columns.seasoning() - columns.grain() - 10;
    TextLine.of(TextLine.shortened(g, grain, font, room), font, palette.secondInk())
        .fromLeft(g, columns.grain(), baseline);
    boolean isSettled = seen.seasoning().equals("settled");
    Font seasoned = isSettled ? font : lettering.semiBold(TEXT);
    double end = columns.width() - columns.seasoning();
    TextLine.of(
            TextLine.shortened(g, seen.seasoning(), seasoned, end),
            seasoned,
            isSettled ? palette.secondInk() : palette.ink())
        .fromLeft(g, columns.seasoning(), baseline);
  }

  private void chance(Graphics2D g, Row row, double baseline) {
    String chance = Figures.chancePercent(row.chance(), view.sureness());
    boolean isPlain = Character.isDigit(chance.charAt(0));
    TextLine.of(chance, lettering.bold(isPlain ? 20 : SMALL), palette.ink())
        .toRight(g, columns.chanceEnds(), baseline + 1);
  }

  /**
   * How a modulus is written: to one number of decimals for all rows, seen or not, so that no digit
   * changes while the list is scrolled.
   */
  static Function<Row, String> modulus(List<Row> serving) {
    int decimals =
        Figures.decimalsForAll(
            serving.stream().map(row -> row.modulusMPa().halfWidth95() / MPA_PER_GPA).toList(),
            USUAL_GPA_DECIMALS);
    return row -> Figures.rounded(row.modulusMPa().value() / MPA_PER_GPA, decimals);
  }

  private void column(
      Graphics2D g, RowsLayout rows, List<Row> seen, double endsAt, Function<Row, String> figure) {
    List<String> figures = new ArrayList<>();
    seen.forEach(row -> figures.add(figure.apply(row)));
    List<String> aligned = Figures.alignedOnThePoint(figures);
    for (int i = 0; i < aligned.size(); i++) {
      TextLine.of(aligned.get(i), lettering.regular(TEXT), palette.ink())
          .toRight(g, endsAt, rows.centreOf(rows.first() + i) + 6);
    }
  }

  /** Bold and underlined where it lies outside what is asked. */
  private void toCome(Graphics2D g, ToCome toCome, Unit unit, Point2D end) {
    double endsAt = end.getX();
    double baseline = end.getY();
    String figure =
        toCome.value() == null
            ? "–"
            : Figures.rounded(unit.fromBase(toCome.value()), ChooseWords.decimals(unit));
    TextLine text =
        TextLine.of(
            figure, toCome.isOff() ? lettering.bold(TEXT) : lettering.regular(TEXT), palette.ink());
    text.toRight(g, endsAt, baseline);
    if (toCome.isOff()) {
      g.setColor(palette.deflection());
      g.setStroke(Style.OUTLINE);
      g.draw(new Line2D.Double(endsAt - text.width(g), baseline + 4, endsAt, baseline + 4));
    }
  }

  /** What ranks them is said under the list. */
  void rankedBy(Graphics2D g, RowsLayout rows) {
    if (!view.serving().isEmpty()) {
      double baseline = view.cannot().isEmpty() ? rows.servingEnd() + 26 : rows.headingPx();
      small("best first by " + view.weights().inWords()).fromLeft(g, columns.verdict(), baseline);
    }
  }

  void cannot(Graphics2D g, RowsLayout rows) {
    if (view.cannot().isEmpty()) {
      return;
    }
    TextLine heading =
        TextLine.of("Cannot serve", lettering.bold(TEXT), palette.ink())
            .after(
                10,
                Integer.toString(view.cannot().size()),
                lettering.regular(TEXT),
                palette.secondInk());
    heading.fromLeft(g, 0, rows.headingPx());
    Font font = lettering.regular(TEXT);
    for (int i = rows.firstCannot(); i < rows.firstCannot() + rows.shownCannot(); i++) {
      Row row = view.cannot().get(i);
      double baseline = rows.centreOfCannot(i) + 5;
      String tag = TextLine.shortened(g, row.tag(), font, Columns.TAG_WIDTH);
      TextLine.of(tag, font, palette.secondInk()).toRight(g, Columns.TAG_ENDS, baseline);
      double room = columns.width() - columns.verdict();
      TextLine.of(TextLine.shortened(g, row.reason(), font, room), font, palette.ink())
          .fromLeft(g, columns.verdict(), baseline);
    }
    int left = view.cannot().size() - rows.firstCannot() - rows.shownCannot();
    int last = rows.firstCannot() + rows.shownCannot() - 1;
    more(g, left, rows.centreOfCannot(last) + RowsLayout.CANNOT_PITCH / 2 + 14);
  }

  private void more(Graphics2D g, int count, double baseline) {
    if (count > 0) {
      small("and " + count + " more: Down").fromLeft(g, columns.verdict(), baseline);
    }
  }
}
