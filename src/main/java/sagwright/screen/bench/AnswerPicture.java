package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import sagwright.drawing.GuessLine;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Paragraph;
import sagwright.drawing.StiffnessLine;
import sagwright.drawing.StiffnessMark;
import sagwright.drawing.StiffnessScale;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;
import sagwright.uncertainty.Estimate;

/** The answer: stiffness and modulus with their ±, the finished shaft, the verdict on its line. */
final class AnswerPicture extends Picture {
  private static final long serialVersionUID = 1L;
  private static final double VALUE_ENDS = 0.63;
  private static final double LAST_ROW = 122;

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
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    BenchView.Answer answer = view.answer();
    String heading = answer == null ? "No run yet" : answer.from();
    TextLine.of(heading, l.regular(16), p.secondInk()).fromLeft(g, 0, 20);
    BenchView.Forecast forecast = view.forecast();
    rows(g, area, rows(answer, forecast));
    g.setColor(p.hairline());
    g.setStroke(Style.OUTLINE);
    g.draw(new Line2D.Double(0, 136, area.getMaxX(), 136));
    if (forecast != null) {
      verdict(g, area, forecast);
    } else {
      new Paragraph(l.regular(16), p.ink(), 24).draw(g, nextStep(), 0, 168, area.getWidth());
    }
    StiffnessMark mark =
        forecast == null
            ? null
            : new StiffnessMark(
                forecast.stiffnessNPerMm().value(),
                forecast.stiffnessNPerMm().halfWidth95(),
                false);
    GuessView guess = view.guess();
    Rectangle2D lower = new Rectangle2D.Double(1, 196, area.getWidth() - 2, StiffnessLine.HEIGHT);
    if (guess != null && guess.isAnswered() && view.order() == null) {
      new GuessLine(Theme.style()).paint(g, lower, guess.guessedNPerMm(), guess.benchMark());
    }
    if (view.order() != null) {
      new StiffnessLine(Theme.style()).paint(g, lower, view.order().ask(), mark, view.words());
      if (mark != null && guess != null && guess.isAnswered()) {
        pointAtGuess(g, lower, mark, guess);
      }
    }
  }

  /** What the hand said, as finished: off by the same share. */
  private void pointAtGuess(
      Graphics2D g, Rectangle2D area, StiffnessMark finished, GuessView guess) {
    double share = guess.guessedNPerMm() / guess.answerNPerMm().value();
    StiffnessScale scale =
        StiffnessScale.around(
            view.order().ask(), List.of(finished), area.getMinX(), area.getMaxX());
    new GuessLine(Theme.style())
        .point(g, scale, finished.stiffnessNPerMm() * share, area.getMinY() + 13);
  }

  /** Both moduli stand side by side where the moisture is known. */
  private static List<Row> rows(BenchView.Answer answer, BenchView.Forecast forecast) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("stiffness now", answer == null ? null : answer.stiffnessNPerMm(), "N/mm"));
    rows.add(new Row("modulus", answer == null ? null : inGPa(answer.modulusMPa()), "GPa"));
    if (answer != null && answer.modulusAt12MPa() != null) {
      rows.add(new Row("   at 12 % moisture", inGPa(answer.modulusAt12MPa()), "GPa"));
    }
    rows.add(new Row("finished cue", forecast == null ? null : forecast.stiffnessNPerMm(), "N/mm"));
    return rows;
  }

  private String nextStep() {
    if (view.shaft() == null) {
      return "Lay a blank down to begin.";
    }
    if (view.answer() == null) {
      return "The first run gives stiffness and modulus.";
    }
    if (view.order() == null) {
      return "Press O and name an order: then it says what this blank would be for it.";
    }
    return "";
  }

  private void verdict(Graphics2D g, Rectangle2D area, BenchView.Forecast forecast) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    TextLine word = TextLine.of(forecast.verdict().word(), l.bold(46), p.ink());
    word.fromLeft(g, -2, 179);
    double room = area.getWidth() - word.width(g) - 16;
    List<String> note = new ArrayList<>(TextLine.wrapped(g, forecast.note(), l.regular(14), room));
    if (note.size() == 1 && !forecast.weightAndBalance().isEmpty()) {
      note.add(forecast.weightAndBalance());
    }
    double baseline = note.size() == 1 ? 179 : 174;
    TextLine.of(chance(forecast), l.bold(20), p.ink()).toRight(g, area.getMaxX(), baseline - 20);
    for (String line : note) {
      TextLine.of(line, l.regular(14), p.secondInk()).toRight(g, area.getMaxX(), baseline);
      baseline += 17;
    }
  }

  private static String chance(BenchView.Forecast forecast) {
    return Figures.chancePercent(forecast.chance(), forecast.sureness()) + " in 100";
  }

  /** A line of the table; the estimate is null where there is none yet. */
  private record Row(String name, Estimate estimate, String unit) {
    String value() {
      return estimate == null ? "–" : Figures.value(estimate.value(), estimate.halfWidth95());
    }

    String plusMinus() {
      boolean known = estimate != null && estimate.halfWidth95() > 0;
      return known ? "± " + Figures.value(estimate.halfWidth95(), estimate.halfWidth95()) : "";
    }
  }

  /** Figures aligned on the point, one under the other. */
  private static void rows(Graphics2D g, Rectangle2D area, List<Row> rows) {
    Lettering l = Theme.style().lettering();
    Palette p = Theme.style().palette();
    List<String> values = Figures.alignedOnThePoint(rows.stream().map(Row::value).toList());
    double valueEnds = area.getWidth() * VALUE_ENDS;
    double pitch = rows.size() > 3 ? 25 : 32;
    double y = LAST_ROW - pitch * (rows.size() - 1);
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      TextLine.of(row.name(), l.regular(16), p.ink()).fromLeft(g, 0, y);
      TextLine.of(values.get(i), l.bold(24), row.estimate() == null ? p.secondInk() : p.ink())
          .toRight(g, valueEnds, y);
      TextLine.of(row.plusMinus(), l.regular(16), p.secondInk()).fromLeft(g, valueEnds + 10, y);
      TextLine.of(row.unit(), l.regular(16), p.secondInk()).toRight(g, area.getMaxX(), y);
      y += pitch;
    }
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
            + f.verdict().word()
            + ", "
            + chance(f)
            + " "
            + f.note()
            + (f.weightAndBalance().isEmpty() ? "." : ", " + f.weightAndBalance() + ".");
  }

  private static String said(Estimate estimate) {
    return Figures.withPlusMinus(estimate.value(), estimate.halfWidth95());
  }
}
