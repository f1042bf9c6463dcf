package sagwright.screen;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import sagwright.drawing.Palette;
import sagwright.drawing.Style;
import sagwright.drawing.TextLine;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.Zoom;

/**
 * The narrow rail at the left: the names of the screens with their keys, and for its edge a shaft,
 * tip up, with a brass ring at the screen that is open.
 */
final class Rail extends JPanel implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;

  /** At zoom 1. */
  static final int WIDTH = 128;

  private static final double FIRST = 97;
  private static final double PITCH = 62;
  private static final double FROM_FOOT = 44;
  private static final double EDGE = 115;

  private final List<RailEntry> entries = new ArrayList<>();
  private double zoom = 1;
  private RailEntry open;
  private String mark = "";

  Rail() {
    setName("rail");
    setLayout(null);
    getAccessibleContext().setAccessibleName("Screens");
  }

  void add(RailEntry entry) {
    entries.add(entry);
    super.add(entry);
  }

  void mark(String word) {
    mark = word;
    getAccessibleContext().setAccessibleDescription(word);
    repaint();
  }

  void open(RailEntry entry) {
    open = entry;
    for (RailEntry each : entries) {
      each.open(each.equals(entry));
    }
    repaint();
  }

  @Override
  public void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension((int) Math.round(WIDTH * zoom), 100);
  }

  @Override
  public void doLayout() {
    int fromTop = 0;
    for (RailEntry entry : entries) {
      double centre = entry.isAtFoot() ? getHeight() / zoom - FROM_FOOT : FIRST + PITCH * fromTop++;
      Dimension size = entry.getPreferredSize();
      entry.setBounds(
          (int) Math.round(8 * zoom),
          (int) Math.round(centre * zoom - size.height / 2.0),
          size.width,
          size.height);
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      g.scale(zoom, zoom);
      Style style = Theme.style();
      TextLine.of("Sagwright", style.lettering().semiBold(16), style.palette().secondInk())
          .fromLeft(g, 20, 38);
      if (!mark.isEmpty()) {
        plate(g, style);
      }
      edge(g, style.palette(), getHeight() / zoom);
      if (open != null) {
        ring(g, style.palette(), (open.getY() + open.getHeight() / 2.0) / zoom);
      }
    } finally {
      g.dispose();
    }
  }

  /** A brass plate under the program's name. */
  private void plate(Graphics2D g, Style style) {
    TextLine line = TextLine.of(mark, style.lettering().semiBold(16), style.palette().ebony());
    g.setColor(style.palette().brass());
    g.fill(new RoundRectangle2D.Double(12, 46, line.width(g) + 16, 24, 4, 4));
    line.fromLeft(g, 20, 63);
  }

  private static double half(double y, double height) {
    return 2.6 + 3.6 * y / height;
  }

  private void edge(Graphics2D g, Palette p, double height) {
    Path2D shaft = new Path2D.Double();
    shaft.moveTo(EDGE - half(0, height), 0);
    shaft.lineTo(EDGE + half(0, height), 0);
    shaft.lineTo(EDGE + half(height, height), height);
    shaft.lineTo(EDGE - half(height, height), height);
    shaft.closePath();
    g.setColor(p.ash());
    g.fill(shaft);
    double points = height * 0.71;
    g.setColor(p.ebony());
    for (int side : new int[] {-1, 1}) {
      Path2D wood = new Path2D.Double();
      wood.moveTo(EDGE + side * half(points, height), points);
      wood.lineTo(EDGE + side * half(height, height), height);
      wood.lineTo(EDGE + side * 1.2, height);
      wood.closePath();
      g.fill(wood);
    }
    g.setColor(p.grain());
    g.setStroke(Style.HAIR);
    g.draw(shaft);
  }

  private static void ring(Graphics2D g, Palette p, double y) {
    RoundRectangle2D ring = new RoundRectangle2D.Double(EDGE - 7, y - 11, 14, 22, 4, 4);
    g.setColor(p.brass());
    g.fill(ring);
    g.setColor(p.ebony());
    g.setStroke(Style.OUTLINE);
    g.draw(ring);
    g.setStroke(Style.HAIR);
    g.draw(new Rectangle2D.Double(EDGE - 7, y - 5, 14, 10));
  }
}
