package sagwright.drawing;

import java.awt.Color;

/**
 * The colours of one theme. Every colour that text is written in stands at least 4.5 : 1 against
 * {@code paper}; {@code deflection} and {@code brass} are for lines and fills only, their text has
 * colours of its own. Load and deflection are told apart by the colour-blind too.
 *
 * @param paper what all is drawn on
 * @param ink first colour of text and lines
 * @param secondInk text that may wait
 * @param hairline thin rules
 * @param pick strip behind a picked row or field
 * @param ash wood of the shaft
 * @param grain lines on ash
 * @param plank wood around the shaft: the ask's band, spare
 * @param ebony splice wood and the one large control
 * @param onEbony text on ebony
 * @param brass ferrule, ring, dot
 * @param brassText text that belongs to brass
 * @param load load, lines and text
 * @param deflection deflection, lines and fills
 * @param deflectionText deflection, text
 */
public record Palette(
    Color paper,
    Color ink,
    Color secondInk,
    Color hairline,
    Color pick,
    Color ash,
    Color grain,
    Color plank,
    Color ebony,
    Color onEbony,
    Color brass,
    Color brassText,
    Color load,
    Color deflection,
    Color deflectionText) {

  public static final Palette LIGHT =
      new Palette(
          new Color(0xF6F1E7),
          new Color(0x22262B),
          new Color(0x575249),
          new Color(0xCBBFA8),
          new Color(0xEEE6D6),
          new Color(0xD9BE8C),
          new Color(0x8A6F3C),
          new Color(0xEBDCBC),
          new Color(0x2A2320),
          new Color(0xF6F1E7),
          new Color(0xA8873A),
          new Color(0x6F5718),
          new Color(0x1F5A92),
          new Color(0xB4532A),
          new Color(0x9E441E));

  public static final Palette DARK =
      new Palette(
          new Color(0x211C18),
          new Color(0xF1EADC),
          new Color(0xBDB2A0),
          new Color(0x4F463B),
          new Color(0x372E26),
          new Color(0xC4A673),
          new Color(0x6A5124),
          new Color(0x54462F),
          new Color(0x0C0907),
          new Color(0xF6F1E7),
          new Color(0xC9A24C),
          new Color(0xDDB866),
          new Color(0x84B9EA),
          new Color(0xE0875B),
          new Color(0xF0A07A));

  /**
   * Contrast of two colours by WCAG 2.2, "contrast ratio": (L₁ + 0.05)/(L₂ + 0.05) with the
   * relative luminances of sRGB; 1 to 21.
   */
  public static double contrast(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(int channel) {
    double s = channel / 255.0;
    return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
  }
}
