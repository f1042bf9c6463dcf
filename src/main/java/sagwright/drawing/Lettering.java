package sagwright.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.List;

/** The one typeface in its four weights; all its figures are of one width. */
public record Lettering(Font light, Font regular, Font semiBold, Font bold) {
  private static final List<String> WEIGHTS = List.of("Light", "Regular", "SemiBold", "Bold");

  /** The typeface that comes with the program. */
  public static Lettering load() {
    return new Lettering(
        read(WEIGHTS.get(0)), read(WEIGHTS.get(1)), read(WEIGHTS.get(2)), read(WEIGHTS.get(3)));
  }

  /** Where the four font files lie: for whoever embeds or registers them. */
  public static List<URL> files() {
    return WEIGHTS.stream().map(Lettering::file).toList();
  }

  public Font light(double size) {
    return light.deriveFont((float) size);
  }

  public Font regular(double size) {
    return regular.deriveFont((float) size);
  }

  public Font semiBold(double size) {
    return semiBold.deriveFont((float) size);
  }

  public Font bold(double size) {
    return bold.deriveFont((float) size);
  }

  private static URL file(String weight) {
    return Lettering.class.getResource("fonts/SagwrightInter-" + weight + ".ttf");
  }

  private static Font read(String weight) {
    try (InputStream in = file(weight).openStream()) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the program's own font is broken: " + weight, e);
    }
  }
}
