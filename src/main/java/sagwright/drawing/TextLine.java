package sagwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** One line of text, of one or more pieces in their own font and colour, set to a baseline. */
public final class TextLine {
  private record Piece(String text, Font font, Color color, double gapBefore) {}

  private final List<Piece> pieces = new ArrayList<>();

  public static TextLine of(String text, Font font, Color color) {
    return new TextLine().then(text, font, color);
  }

  public TextLine then(String text, Font font, Color color) {
    return after(0, text, font, color);
  }

  /** The next piece, a gap behind the last. */
  public TextLine after(double gap, String text, Font font, Color color) {
    pieces.add(new Piece(text, font, color, gap));
    return this;
  }

  public double width(Graphics2D g) {
    double width = 0;
    for (Piece piece : pieces) {
      width += piece.gapBefore() + advance(g, piece);
    }
    return width;
  }

  /** Draws from x on to the right and returns where it ended. */
  public double fromLeft(Graphics2D g, double x, double baseline) {
    double at = x;
    for (Piece piece : pieces) {
      at += piece.gapBefore();
      g.setFont(piece.font());
      g.setColor(piece.color());
      g.drawString(piece.text(), (float) at, (float) baseline);
      at += advance(g, piece);
    }
    return at;
  }

  /** Draws so that the line ends at x. */
  public void toRight(Graphics2D g, double x, double baseline) {
    fromLeft(g, x - width(g), baseline);
  }

  public void centred(Graphics2D g, double x, double baseline) {
    fromLeft(g, x - width(g) / 2, baseline);
  }

  /** A text broken between words into lines of at most a width. */
  public static List<String> wrapped(Graphics2D g, String text, Font font, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && widthOf(g, longer, font) > width) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** A text cut off with an ellipsis where it is wider than a width. */
  public static String shortened(Graphics2D g, String text, Font font, double width) {
    String shown = text;
    while (shown.length() > 2 && widthOf(g, shown, font) > width) {
      shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
    }
    return shown;
  }

  private static double widthOf(Graphics2D g, String text, Font font) {
    return font.getStringBounds(text, g.getFontRenderContext()).getWidth();
  }

  private static double advance(Graphics2D g, Piece piece) {
    return widthOf(g, piece.text(), piece.font());
  }
}
