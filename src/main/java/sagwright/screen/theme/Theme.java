package sagwright.screen.theme;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import sagwright.drawing.Lettering;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;

/** The two themes. What is in force is kept by Swing's own {@code UIManager}. */
public enum Theme {
  LIGHT(Palette.LIGHT),
  DARK(Palette.DARK);

  /** Size of plain text at zoom 1. */
  public static final float TEXT_SIZE = 16;

  private static final String STYLE_KEY = "Sagwright.style";

  private final Palette palette;

  Theme(Palette palette) {
    this.palette = palette;
  }

  public Palette palette() {
    return palette;
  }

  /** Before any window: what must be known before Swing starts. */
  public static void prepare() {
    setUnlessSet("flatlaf.uiScale", "1");
    setUnlessSet("flatlaf.useWindowDecorations", "false");
    setUnlessSet("apple.awt.application.name", "Sagwright");
  }

  /**
   * Puts this theme in force: typeface, then colours, then look and feel. Event thread only.
   * Windows that are already open follow by {@code FlatLaf.updateUI()}.
   */
  public void install() {
    Lettering lettering = isInstalled() ? style().lettering() : registered(Lettering.load());
    UIManager.put("defaultFont", new FontUIResource(lettering.regular(TEXT_SIZE)));
    FlatLaf.setGlobalExtraDefaults(defaults());
    FlatLaf look = this == DARK ? new FlatDarkLaf() : new FlatLightLaf();
    if (!FlatLaf.setup(look)) {
      throw new IllegalStateException("the look and feel does not start");
    }
    UIManager.put(STYLE_KEY, new Style(palette, lettering));
  }

  private static boolean isInstalled() {
    return UIManager.get(STYLE_KEY) != null;
  }

  /** Colours and typeface of the theme in force. */
  public static Style style() {
    Object style = UIManager.get(STYLE_KEY);
    if (style == null) {
      throw new IllegalStateException("install a theme first");
    }
    return (Style) style;
  }

  private static Lettering registered(Lettering lettering) {
    GraphicsEnvironment here = GraphicsEnvironment.getLocalGraphicsEnvironment();
    for (Font font :
        new Font[] {
          lettering.light(), lettering.regular(), lettering.semiBold(), lettering.bold()
        }) {
      here.registerFont(font);
    }
    return lettering;
  }

  private static void setUnlessSet(String property, String value) {
    if (System.getProperty(property) == null) {
      System.setProperty(property, value);
    }
  }

  private Map<String, String> defaults() {
    Map<String, String> d = new HashMap<>();
    d.put("@background", hex(palette.paper()));
    d.put("@foreground", hex(palette.ink()));
    d.put("@accentColor", hex(palette.brass()));
    d.put("@disabledForeground", hex(palette.secondInk()));
    d.put("Sagwright.secondInk", hex(palette.secondInk()));
    d.put("Sagwright.brassText", hex(palette.brassText()));
    d.put("Sagwright.pick", hex(palette.pick()));
    d.put("Sagwright.deflectionText", hex(palette.deflectionText()));
    d.put("Component.focusWidth", "2");
    d.put("Component.innerFocusWidth", "1");
    d.put("Component.focusColor", hex(palette.brass()));
    d.put("Component.focusedBorderColor", hex(palette.brassText()));
    d.put("Component.borderColor", hex(palette.secondInk()));
    d.put("Component.arc", "4");
    d.put("Button.arc", "6");
    d.put("Button.borderColor", hex(palette.secondInk()));
    d.put("Button.background", hex(palette.paper()));
    d.put("Button.margin", "9,16,9,16");
    d.put("Button.minimumHeight", "44");
    d.put("TextComponent.arc", "4");
    d.put("TextField.background", hex(palette.paper()));
    d.put("TextField.margin", "8,8,8,8");
    d.put("TextArea.background", hex(palette.paper()));
    d.put("TextArea.margin", "8,8,8,8");
    d.put("ComboBox.background", hex(palette.paper()));
    d.put("ComboBox.padding", "8,8,8,8");
    d.put("TextField.placeholderForeground", hex(palette.secondInk()));
    for (String text : new String[] {"TextField", "TextArea", "ComboBox", "List", "Table"}) {
      d.put(text + ".selectionBackground", hex(palette.plank()));
      d.put(text + ".selectionForeground", hex(palette.ink()));
    }
    d.put("Table.background", hex(palette.paper()));
    d.put("Table.selectionBackground", hex(palette.pick()));
    d.put("Table.selectionInactiveBackground", hex(palette.pick()));
    d.put("Table.selectionInactiveForeground", hex(palette.ink()));
    d.put("Table.showHorizontalLines", "true");
    d.put("Table.gridColor", hex(palette.hairline()));
    d.put("Table.rowHeight", "44");
    d.put("TableHeader.background", hex(palette.paper()));
    d.put("TableHeader.foreground", hex(palette.secondInk()));
    d.put("TableHeader.separatorColor", hex(palette.paper()));
    d.put("TableHeader.bottomSeparatorColor", hex(palette.ink()));
    d.put("TableHeader.height", "36");
    d.put("ScrollPane.border", "0,0,0,0");
    d.put("ScrollBar.width", "14");
    d.put("ToolTip.background", hex(palette.pick()));
    return d;
  }

  private static String hex(Color color) {
    return String.format(Locale.ROOT, "#%06X", color.getRGB() & 0xFFFFFF);
  }
}
