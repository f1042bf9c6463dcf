package sagwright.screen.finish;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.StiffnessLine;
import sagwright.drawing.StiffnessMark;
import sagwright.drawing.TextLine;
import sagwright.finish.Forecast;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.PlaningStep;
import sagwright.grade.WordScale;
import sagwright.job.PlannedFinish;
import sagwright.quantity.Figures;
import sagwright.quantity.Unit;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;
import sagwright.uncertainty.Estimate;

/**
 * What comes of a finish plan, in three columns: the finished cue's figures; verdict and chance on
 * the stiffness line; what more or less planing would do, and the lead.
 */
public final class PlanPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private static final int HEIGHT = 132;
  private static final double GAP = 28;
  private static final double ROW = 24;
  private static final double LINE = 19;
  private static final double ALSO = 17;

  /** Where figures end, as a share of the first column. */
  private static final double VALUE_ENDS = 0.58;

  private transient PlannedFinish finish;
  private transient ShopUnits units = ShopUnits.METRIC;
  private String wanting = "";
  private transient WordScale words;

  public PlanPicture(String name) {
    super(name, new Dimension(900, HEIGHT));
  }

  /**
   * @param shop its words; null where none are set
   */
  public void show(PlannedFinish next, WordScale shop, ShopUnits inUnits) {
    finish = next;
    units = inUnits;
    wanting = "";
    words = shop;
    repaint();
  }

  /** Nothing to show yet, and why. */
  public void showWanting(String why) {
    finish = null;
    wanting = why;
    repaint();
  }

  /** Where the third column begins. */
  public static double thirdColumn(double width) {
    return width * 0.615;
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (finish == null) {
      note(g, wanting, 0, 14, area.getWidth());
      return;
    }
    double third = thirdColumn(area.getWidth());
    double second = area.getWidth() * 0.295;
    figures(g, second - GAP);
    verdict(g, second, third - GAP);
    effects(g, third, area.getWidth());
  }

  private void figures(Graphics2D g, double width) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    double plusMinusWidth = 68;
    note(g, PlanWords.where(finish), 0, 14, width - plusMinusWidth);
    if (finish.graded() == null) {
      note(g, PlanWords.wanted(finish), 0, 14 + LINE, width);
      return;
    }
    TextLine.of("± is 95 %", l.regular(14), p.secondInk()).toRight(g, width, 14);
    Forecast forecast = finish.graded().forecast();
    Ask ask = finish.order().ask();
    Estimate stiffness = finish.graded().grade().stiffnessNPerMm();
    double half = stiffness.halfWidth95();
    String plusMinus = half > 0 ? "± " + Figures.value(half, half) + " N/mm" : "N/mm";
    row(g, 0, "finished cue", Figures.value(stiffness.value(), half), plusMinus, width);
    row(
        g,
        1,
        "weight, " + units.mass().symbol(),
        figure(forecast.massG(), units.mass()),
        PlanWords.asked(ask.massG(), units.mass()),
        width);
    missed(g, 1, forecast.massG(), ask.massG(), width);
    row(
        g,
        2,
        "balance, " + units.length().symbol(),
        figure(forecast.balanceFromButtMm(), units.length()),
        PlanWords.asked(ask.balanceFromButtMm(), units.length()),
        width);
    missed(g, 2, forecast.balanceFromButtMm(), ask.balanceFromButtMm(), width);
    TextLine.of(
            TextLine.shortened(g, PlanWords.details(finish, units), l.regular(14), width),
            l.regular(14),
            p.secondInk())
        .fromLeft(g, 0, HEIGHT - 18);
  }

  private static String figure(Double base, Unit unit) {
    return base == null ? "–" : PlanWords.shown(base, unit);
  }

  private static void row(
      Graphics2D g, int place, String name, String value, String behind, double width) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    double y = 40 + ROW * place;
    TextLine.of(name, l.regular(16), p.ink()).fromLeft(g, 0, y);
    double ends = width * VALUE_ENDS;
    TextLine.of(value, l.bold(20), p.ink()).toRight(g, ends, y);
    note(g, behind, ends + 8, y, width - ends - 8);
  }

  /** A line under a figure that lies outside what is asked, as among the candidates. */
  private static void missed(Graphics2D g, int place, Double figure, Aim aim, double width) {
    if (figure != null && aim != null && aim.isMissedBy(figure)) {
      g.setColor(Theme.style().palette().deflection());
      double ends = width * VALUE_ENDS;
      g.fill(new Rectangle2D.Double(ends - 42, 44 + ROW * place, 42, 2));
    }
  }

  private void verdict(Graphics2D g, double from, double to) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    StiffnessMark mark = null;
    if (finish.graded() != null) {
      TextLine.of(finish.graded().grade().verdict().word(), l.bold(24), p.ink())
          .fromLeft(g, from, 20);
      TextLine.of(PlanWords.chanceOfAll(finish), l.semiBold(16), p.ink()).toRight(g, to, 20);
      Estimate stiffness = finish.graded().grade().stiffnessNPerMm();
      boolean cannotServe = !finish.graded().forecast().fits();
      mark = new StiffnessMark(stiffness.value(), stiffness.halfWidth95(), cannotServe);
    }
    Ask ask = finish.order().ask();
    boolean isUsual = words != null && ask.setUp().equals(words.usual());
    boolean hasRoom = finish.order().alsoAsked().isEmpty();
    new StiffnessLine(Theme.style())
        .paint(
            g,
            new Rectangle2D.Double(from, 32, to - from, StiffnessLine.HEIGHT),
            ask,
            mark,
            isUsual && hasRoom ? words : null);
    for (int i = 0; finish.graded() != null && i < finish.graded().alsoAsked().size(); i++) {
      note(g, PlanWords.also(finish, i), from, 109 + ALSO * i, to - from);
    }
  }

  private void effects(Graphics2D g, double from, double to) {
    double y = 14;
    for (PlaningStep step : finish.planing()) {
      note(g, PlanWords.planing(finish, step, units), from, y, to - from);
      y += LINE;
    }
    Lettering l = Theme.style().lettering();
    y += finish.planing().isEmpty() ? 0 : 4;
    new Paragraph(l.regular(14), Theme.style().palette().ink(), LINE)
        .draw(g, finish.lead().inWords(), from, y, to - from);
  }

  private static void note(Graphics2D g, String text, double x, double y, double width) {
    Lettering l = Theme.style().lettering();
    TextLine.of(
            TextLine.shortened(g, text, l.regular(14), width),
            l.regular(14),
            Theme.style().palette().secondInk())
        .fromLeft(g, x, y);
  }

  @Override
  protected String describe() {
    if (finish == null) {
      return wanting;
    }
    List<String> said = new ArrayList<>(List.of(PlanWords.where(finish)));
    said.add(PlanWords.wanted(finish));
    if (finish.graded() != null) {
      Forecast forecast = finish.graded().forecast();
      said.add(
          "finished cue "
              + PlanWords.stiffness(finish.graded().grade().stiffnessNPerMm())
              + " N/mm, "
              + finish.graded().grade().verdict().word()
              + ", "
              + PlanWords.chanceOfAll(finish));
      said.add("weight " + figure(forecast.massG(), units.mass()) + " " + units.mass().symbol());
      said.add(
          "balance "
              + figure(forecast.balanceFromButtMm(), units.length())
              + " "
              + units.length().symbol());
      said.add(PlanWords.details(finish, units));
      IntStream.range(0, finish.graded().alsoAsked().size())
          .forEach(i -> said.add(PlanWords.also(finish, i)));
      finish.planing().forEach(step -> said.add(PlanWords.planing(finish, step, units)));
    }
    said.add(finish.lead().inWords());
    return said.stream().filter(s -> !s.isEmpty()).collect(Collectors.joining("; "));
  }
}
