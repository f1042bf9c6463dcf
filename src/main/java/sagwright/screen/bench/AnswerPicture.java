package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.Figures;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.StiffnessLine;
import sagwright.drawing.StiffnessMark;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;
import sagwright.uncertainty.Estimate;

/** The answer: stiffness and modulus with their ±, the finished shaft, the verdict on its line. */
final class AnswerPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double VALUE_ENDS = 0.63;
  private static final int MOST_DECIMALS = 3;

  private transient BenchView view;

  AnswerPicture() {
    super("answer", new Dimension(396, 290));
  }

  void show(BenchView next) {
    view = next;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (view == null) {
      return;
    }
    Style.smooth(g);
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    BenchView.Answer answer = view.answer();
    String heading = answer == null ? "No run yet" : answer.from();
    TextLine.of(heading, l.regular(16), p.secondInk()).fromLeft(g, 0, 20);
    row(g, area, 56, "stiffness now", answer == null ? null : answer.stiffnessNPerMm(), "N/mm");
    Estimate modulus = answer == null ? null : inGPa(answer.modulusMPa());
    row(g, area, 88, "modulus", modulus, "GPa");
    BenchView.Forecast forecast = view.forecast();
    row(g, area, 120, "finished cue", forecast == null ? null : forecast.stiffnessNPerMm(), "N/mm");
    g.setColor(p.hairline());
    g.setStroke(Style.OUTLINE);
    g.draw(new Line2D.Double(0, 136, area.getMaxX(), 136));
    if (forecast != null) {
      verdict(g, area, forecast);
    } else {
      String next = nextStep();
      TextLine.of(next, l.regular(16), p.ink()).fromLeft(g, 0, 168);
    }
    StiffnessMark mark =
        forecast == null
            ? null
            : new StiffnessMark(
                forecast.stiffnessNPerMm().value(),
                forecast.stiffnessNPerMm().halfWidth95(),
                false);
    if (view.order() != null) {
      new StiffnessLine(Theme.style())
          .paint(
              g,
              new Rectangle2D.Double(1, 196, area.getWidth() - 2, StiffnessLine.HEIGHT),
              view.order().band(),
              mark,
              view.words());
    }
  }

  private String nextStep() {
    if (view.shaft() == null) {
      return "Lay a blank down to begin.";
    }
    if (view.answer() == null) {
      return "The first run gives stiffness and modulus.";
    }
    if (view.order() == null) {
      return "Name an order, and see what this blank would be for it.";
    }
    return "";
  }

  private void verdict(Graphics2D g, Rectangle2D area, BenchView.Forecast forecast) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    TextLine.of(forecast.word(), l.bold(46), p.ink()).fromLeft(g, -2, 179);
    TextLine.of(Figures.inHundred(forecast.chance(), forecast.sureness()), l.bold(20), p.ink())
        .toRight(g, area.getMaxX(), 159);
    TextLine.of(forecast.note(), l.regular(14), p.secondInk()).toRight(g, area.getMaxX(), 179);
  }

  /** Figures aligned on the point: what a row has fewer decimals is filled with figure spaces. */
  private static void row(
      Graphics2D g, Rectangle2D area, double y, String name, Estimate estimate, String unit) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    TextLine.of(name, l.regular(16), p.ink()).fromLeft(g, 0, y);
    TextLine.of(unit, l.regular(16), p.secondInk()).toRight(g, area.getMaxX(), y);
    double valueEnds = area.getWidth() * VALUE_ENDS;
    if (estimate == null) {
      TextLine.of("–", l.bold(24), p.secondInk()).toRight(g, valueEnds, y);
      return;
    }
    double half = estimate.halfWidth95();
    int decimals = Math.min(MOST_DECIMALS, Figures.decimalsFor(half));
    String fill = Figures.space(decimals == 0 ? MOST_DECIMALS + 1 : MOST_DECIMALS - decimals);
    TextLine.of(Figures.fixed(estimate.value(), decimals) + fill, l.bold(24), p.ink())
        .toRight(g, valueEnds, y);
    TextLine.of("± " + Figures.fixed(half, decimals), l.regular(16), p.secondInk())
        .fromLeft(g, valueEnds + 10, y);
  }

  private static Estimate inGPa(Estimate mpa) {
    return new Estimate(mpa.value() / 1000, mpa.standardUncertainty() / 1000);
  }

  @Override
  protected String describe() {
    if (view == null || view.answer() == null) {
      return view == null ? "" : nextStep();
    }
    String words =
        view.answer().from()
            + ": stiffness "
            + said(view.answer().stiffnessNPerMm())
            + " N/mm, modulus "
            + said(inGPa(view.answer().modulusMPa()))
            + " GPa.";
    BenchView.Forecast f = view.forecast();
    return f == null
        ? words
        : words
            + " Finished cue "
            + said(f.stiffnessNPerMm())
            + " N/mm: "
            + f.word()
            + ", "
            + Figures.inHundred(f.chance(), f.sureness())
            + " "
            + f.note()
            + ".";
  }

  private static String said(Estimate estimate) {
    int decimals = Figures.decimalsFor(estimate.halfWidth95());
    return Figures.fixed(estimate.value(), decimals)
        + " ± "
        + Figures.fixed(estimate.halfWidth95(), decimals);
  }
}
