package sagwright.screen.choose;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.PickLine;
import sagwright.drawing.SeriesBars;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The picked blanks as columns: figures, what the ± is made of, warnings, notes. */
final class SideBySidePicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double LABELS = 214;
  private static final double LINE = 24;
  private static final double SMALL_LINE = 20;
  private static final double TEXT = 16;
  private static final double SMALL = 14;
  private static final double FIGURE = 44;

  /** Of the sources of the ± so many are told, the greatest; the others count as one. */
  private static final int SOURCES = 4;

  private transient ChooseView view = ChooseView.reading(ShopUnits.METRIC);
  private transient List<Row> rows = List.of();
  private transient List<Closely> looks = List.of();

  SideBySidePicture() {
    super("closely.columns", new Dimension(1000, 330));
  }

  void show(ChooseView next, List<Row> picked, List<Closely> closely) {
    view = next;
    rows = picked;
    looks = closely;
    repaint();
  }

  private Optional<Closely> look(Row row) {
    return looks.stream().filter(look -> look.tag().equals(row.tag())).findFirst();
  }

  private double left(Rectangle2D area, int column) {
    return LABELS + width(area) * column;
  }

  private double width(Rectangle2D area) {
    return (area.getWidth() - LABELS) / Math.max(2, rows.size());
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (rows.isEmpty()) {
      return;
    }
    Palette p = Theme.style().palette();
    Lettering l = Theme.style().lettering();
    for (int i = 0; i < rows.size(); i++) {
      double x = left(area, i);
      PickLine.of(i).sample(g, Theme.style(), x, 13, 24);
      String tag = TextLine.shortened(g, rows.get(i).tag(), l.bold(20), width(area) - 44);
      TextLine.of(tag, l.bold(20), p.ink()).fromLeft(g, x + 32, 20);
    }
    double y = 20 + LINE;
    y = line(g, area, y, "finished, N/mm", rows.stream().map(SideBySidePicture::finished).toList());
    y = line(g, area, y, "modulus, GPa", rows.stream().map(SideBySidePicture::modulus).toList());
    y = line(g, area, y, "stage, moisture", rows.stream().map(this::stage).toList());
    y = line(g, area, y, "grain", rows.stream().map(row -> orDash(row.seen().grain())).toList());
    y = lines(g, area, y, "seasoning", rows.stream().map(row -> row.seen().whole()).toList());
    y = lines(g, area, y, "tested", rows.stream().map(this::tested).toList());
    y = budgets(g, area, y + 8);
    notes(g, area, y + 8);
  }

  private static double line(Graphics2D g, Rectangle2D area, double y, String label) {
    Palette p = Theme.style().palette();
    g.setColor(p.hairline());
    g.setStroke(Style.HAIR);
    g.draw(new Line2D.Double(0, y - 17, area.getWidth(), y - 17));
    TextLine.of(label, Theme.style().lettering().regular(SMALL), p.secondInk()).fromLeft(g, 0, y);
    return y;
  }

  private double line(Graphics2D g, Rectangle2D area, double y, String label, List<String> texts) {
    line(g, area, y, label);
    Font font = Theme.style().lettering().regular(TEXT);
    for (int i = 0; i < texts.size(); i++) {
      String text = TextLine.shortened(g, texts.get(i), font, width(area) - 16);
      TextLine.of(text, font, Theme.style().palette().ink()).fromLeft(g, left(area, i), y);
    }
    return y + LINE;
  }

  /** The same in as many lines as the longest takes. */
  private double lines(
      Graphics2D g, Rectangle2D area, double top, String label, List<String> texts) {
    line(g, area, top, label);
    Font font = Theme.style().lettering().regular(SMALL);
    double end = top;
    for (int i = 0; i < texts.size(); i++) {
      double y = top;
      for (String part : TextLine.wrapped(g, texts.get(i), font, width(area) - 16)) {
        TextLine.of(part, font, Theme.style().palette().ink()).fromLeft(g, left(area, i), y);
        end = Math.max(end, y);
        y += SMALL_LINE - 2;
      }
    }
    return end + LINE;
  }

  private static String finished(Row row) {
    return Figures.withPlusMinus(row.stiffnessNPerMm().value(), row.stiffnessNPerMm().halfWidth95())
        + ", "
        + row.verdict();
  }

  private static String modulus(Row row) {
    return Figures.withPlusMinus(
        row.modulusMPa().value() / 1000, row.modulusMPa().halfWidth95() / 1000);
  }

  private String stage(Row row) {
    String stage = orDash(row.stage() == null ? "" : row.stage());
    Double moist = look(row).map(Closely::moisturePercent).orElse(null);
    return moist == null ? stage : stage + ", " + Figures.rounded(moist, 1) + " % moist";
  }

  /** Runs at unlike places cannot be held against each other by eye: then it is said. */
  private String tested(Row row) {
    boolean isAlike = looks.stream().map(Closely::setUp).distinct().count() <= 1;
    String day = orDash(look(row).map(Closely::tested).orElse(""));
    String setUp = look(row).map(Closely::setUp).orElse("");
    return isAlike || setUp.isEmpty() ? day : day + ", " + setUp;
  }

  private static String orDash(String text) {
    return text.isEmpty() ? "–" : text;
  }

  /** Bars to one scale, so that the columns can be held against each other. */
  private double budgets(Graphics2D g, Rectangle2D area, double top) {
    Palette p = Theme.style().palette();
    Font font = Theme.style().lettering().regular(SMALL);
    List<String> sources = sources();
    if (sources.isEmpty()) {
      return top;
    }
    double greatest =
        looks.stream()
            .flatMap(look -> look.budget().stream())
            .mapToDouble(SeriesBars.Bar::amount)
            .max()
            .orElse(1);
    double y = line(g, area, top, "± of the run's modulus, MPa");
    for (String source : sources) {
      y += SMALL_LINE;
      TextLine.of(TextLine.shortened(g, source, font, LABELS - 12), font, p.ink())
          .fromLeft(g, 0, y);
      for (int i = 0; i < rows.size(); i++) {
        Optional<SeriesBars.Bar> bar =
            look(rows.get(i)).stream()
                .flatMap(look -> look.budget().stream())
                .filter(b -> b.words().equals(source))
                .findFirst();
        if (bar.isPresent()) {
          double x = left(area, i);
          double room = width(area) - FIGURE - 24;
          double length = Math.max(1, room * bar.get().amount() / greatest);
          g.setColor(p.ash());
          g.fill(new Rectangle2D.Double(x, y - 11, length, 12));
          TextLine.of(bar.get().figure(), font, p.ink()).fromLeft(g, x + length + 8, y);
        }
      }
    }
    return y + SMALL_LINE + 4;
  }

  private List<String> sources() {
    List<SeriesBars.Bar> all = new ArrayList<>();
    looks.forEach(look -> all.addAll(look.budget()));
    all.sort((a, b) -> Double.compare(b.amount(), a.amount()));
    return all.stream().map(SeriesBars.Bar::words).distinct().limit(SOURCES).toList();
  }

  /** What makes doubtful, then what somebody wrote, as far as there is room. */
  private void notes(Graphics2D g, Rectangle2D area, double top) {
    Palette p = Theme.style().palette();
    Lettering l = Theme.style().lettering();
    line(g, area, top, "mind, and notes");
    for (int i = 0; i < rows.size(); i++) {
      List<String> warnings = rows.get(i).warnings();
      List<String> noted = look(rows.get(i)).map(Closely::notes).orElse(List.of());
      double y = notes(g, area, left(area, i), top, warnings, l.semiBold(SMALL));
      y = notes(g, area, left(area, i), y, noted, l.regular(SMALL));
      if (warnings.isEmpty() && noted.isEmpty()) {
        TextLine.of("–", l.regular(SMALL), p.ink()).fromLeft(g, left(area, i), y);
      }
    }
  }

  private double notes(
      Graphics2D g, Rectangle2D area, double left, double top, List<String> texts, Font font) {
    double y = top;
    for (String text : texts) {
      List<String> parts = TextLine.wrapped(g, text, font, width(area) - 24);
      for (int i = 0; i < parts.size() && y < area.getHeight(); i++) {
        boolean isCut = i + 1 < parts.size() && y + SMALL_LINE - 2 >= area.getHeight();
        String part = parts.get(i) + (isCut ? " …" : "");
        TextLine.of(part, font, Theme.style().palette().ink()).fromLeft(g, left, y);
        y += SMALL_LINE - 2;
      }
    }
    return y;
  }

  @Override
  protected String describe() {
    StringJoiner words = new StringJoiner("; ");
    for (Row row : rows) {
      String notes = look(row).map(look -> String.join(", ", look.notes())).orElse("");
      String mostly = look(row).map(Closely::mostly).orElse("");
      words.add(
          row.tag()
              + " "
              + finished(row)
              + (mostly.isEmpty() ? "" : ", ± mostly of " + mostly)
              + ", "
              + row.seen().whole()
              + row.warnings().stream().map(w -> ", mind: " + w).collect(Collectors.joining())
              + (notes.isEmpty() ? "" : ", noted: " + notes));
    }
    return view.order() == null ? "" : words.toString();
  }
}
