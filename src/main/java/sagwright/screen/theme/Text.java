package sagwright.screen.theme;

import javax.swing.BorderFactory;
import javax.swing.JLabel;
import sagwright.drawing.Lettering;

/** Labels in the few sizes that there are; their colours follow the theme. */
public final class Text {
  private Text() {}

  public static JLabel plain(String words) {
    return label(words, Theme.TEXT_SIZE, false);
  }

  /** Text that may wait. */
  public static JLabel second(String words) {
    return dim(label(words, Theme.TEXT_SIZE, false));
  }

  /** Notes: the smallest there is. */
  public static JLabel note(String words) {
    return dim(label(words, 14, false));
  }

  public static JLabel heading(String words) {
    return label(words, 24, true);
  }

  /** What a page is about, where the bench has its tag. */
  public static JLabel title(String words) {
    JLabel title = label(words, 34, true);
    title.setBorder(BorderFactory.createEmptyBorder(0, 0, 6, 0));
    return title;
  }

  public static JLabel strong(String words) {
    return label(words, Theme.TEXT_SIZE, true);
  }

  /** A key that leads to the field beside it, as small actions name theirs. */
  public static JLabel key(String key) {
    JLabel label = label(key, 14, true);
    label.putClientProperty("FlatLaf.style", "foreground: $Sagwright.brassText");
    return label;
  }

  public static JLabel label(String words, double size, boolean bold) {
    JLabel label = new JLabel(words);
    Lettering lettering = Theme.style().lettering();
    label.setFont(bold ? lettering.semiBold(size) : lettering.regular(size));
    return label;
  }

  private static JLabel dim(JLabel label) {
    label.putClientProperty("FlatLaf.style", "foreground: $Sagwright.secondInk");
    return label;
  }
}
