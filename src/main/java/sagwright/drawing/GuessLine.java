package sagwright.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A stiffness line with what the hand said over it and what the bench showed on it. */
public final class GuessLine {
  /** Height that {@link #paint} needs. */
  public static final double HEIGHT = 86;

  private static final double POINTER = 8;

  private final Style style;

  public GuessLine(Style style) {
    this.style = style;
  }

  /**
   * @param guessedNPerMm what the hand said
   * @param answer what the bench showed
   */
  public void paint(Graphics2D g, Rectangle2D area, double guessedNPerMm, StiffnessMark answer) {
    Style.smooth(g);
    Palette p = style.palette();
    StiffnessScale scale =
        StiffnessScale.around(
            null,
            List.of(answer, new StiffnessMark(guessedNPerMm, 0.06 * guessedNPerMm, true)),
            area.getMinX(),
            area.getMaxX());
    StiffnessLine line = new StiffnessLine(style);
    double y = area.getMinY() + 46;
    line.axis(g, scale, y);
    line.ticks(g, scale, y, y + 32);
    line.mark(g, scale, answer, y);
    point(g, scale, guessedNPerMm, y - 9);
    double x = scale.pxWithin(guessedNPerMm);
    TextLine hand = TextLine.of("hand", style.lettering().semiBold(14), p.ink());
    TextLine bench = TextLine.of("bench", style.lettering().semiBold(14), p.brassText());
    double benchX = scale.pxWithin(answer.stiffnessNPerMm());
    hand.centred(g, within(area, x, hand.width(g)), y - 30);
    double clear = (hand.width(g) + bench.width(g)) / 2 + 10;
    double besideHand =
        Math.abs(benchX - x) >= clear ? benchX : x + Math.copySign(clear, benchX - x);
    bench.centred(g, within(area, besideHand, bench.width(g)), y - 30);
  }

  /** What the hand said, as a pointer from above whose tip stands at a height. */
  public void point(Graphics2D g, StiffnessScale scale, double guessedNPerMm, double tipPx) {
    double x = scale.pxWithin(guessedNPerMm);
    Path2D pointer = new Path2D.Double();
    pointer.moveTo(x, tipPx);
    pointer.lineTo(x - POINTER, tipPx - 1.7 * POINTER);
    pointer.lineTo(x + POINTER, tipPx - 1.7 * POINTER);
    pointer.closePath();
    g.setColor(style.palette().paper());
    g.fill(pointer);
    g.setColor(style.palette().ink());
    g.setStroke(Style.OUTLINE);
    g.draw(pointer);
  }

  private static double within(Rectangle2D area, double x, double width) {
    return Math.max(area.getMinX() + width / 2, Math.min(area.getMaxX() - width / 2, x));
  }
}
