package sagwright.screen.orders;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.StiffnessLine;
import sagwright.grade.Ask;
import sagwright.grade.WordScale;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The ask on the stiffness line, with the shop's words under it. */
final class AskPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private transient Ask ask;
  private transient WordScale words;

  AskPicture() {
    super("orders.ask", new Dimension(200, (int) StiffnessLine.HEIGHT));
  }

  /**
   * @param nextAsk null while it is not typed
   * @param nextWords null where they do not hold
   */
  void show(Ask nextAsk, WordScale nextWords) {
    ask = nextAsk;
    words = nextWords;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (ask != null) {
      new StiffnessLine(Theme.style())
          .paint(
              g,
              new Rectangle2D.Double(1, 0, area.getWidth() - 2, area.getHeight()),
              ask,
              null,
              words);
    }
  }

  @Override
  protected String describe() {
    return ask == null
        ? "no ask yet"
        : "asked between "
            + Figures.rounded(ask.lowestNPerMm(), 3)
            + " and "
            + Figures.rounded(ask.highestNPerMm(), 3)
            + " N/mm";
  }
}
