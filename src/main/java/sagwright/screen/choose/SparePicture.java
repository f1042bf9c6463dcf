package sagwright.screen.choose;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import sagwright.drawing.SpareDrawing;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The finished shaft inside each of the picked blanks. */
final class SparePicture extends Picture {
  private static final long serialVersionUID = 1L;

  private transient ChooseView view = ChooseView.reading(ShopUnits.METRIC);
  private transient List<Row> picked = List.of();

  SparePicture(String name) {
    super(name, new Dimension(600, 176));
  }

  void show(ChooseView next, List<Row> rows) {
    view = next;
    picked = rows;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    if (view.order() == null) {
      return;
    }
    List<SpareDrawing.Shaft> shafts = new ArrayList<>();
    for (Row row : picked) {
      shafts.add(new SpareDrawing.Shaft(row.tag(), row.blank(), row.cut(), row.balance().value()));
    }
    Rectangle2D inside = new Rectangle2D.Double(6, 0, area.getWidth() - 12, area.getHeight());
    new SpareDrawing(Theme.style())
        .paint(g, inside, new SpareDrawing.Scene(view.order().plan(), shafts));
  }

  @Override
  protected String describe() {
    StringJoiner words = new StringJoiner("; ");
    for (Row row : picked) {
      words.add(
          row.tag()
              + " least spare "
              + Figures.rounded(row.cut().leastSpareMm(), 2)
              + " mm at "
              + Figures.rounded(row.cut().leastSpareAtMm(), 0)
              + " mm");
    }
    return words.toString();
  }
}
