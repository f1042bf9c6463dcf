package sagwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;

/** Text that is broken between words into lines, one below the other. */
public record Paragraph(Font font, Color color, double lineHeight) {
  /**
   * Draws a text in lines of at most a width.
   *
   * @param baseline of its first line
   * @return the baseline of what may stand below it
   */
  public double draw(Graphics2D g, String text, double x, double baseline, double width) {
    double next = baseline;
    for (String line : TextLine.wrapped(g, text, font, width)) {
      TextLine.of(line, font, color).fromLeft(g, x, next);
      next += lineHeight;
    }
    return next;
  }
}
