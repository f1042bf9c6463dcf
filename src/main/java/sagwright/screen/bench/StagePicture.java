package sagwright.screen.bench;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.LongDrawing;
import sagwright.drawing.LongScene;
import sagwright.quantity.Figures;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The long drawing of the bench; the mouse reads off a place. */
final class StagePicture extends Picture {
  private static final long serialVersionUID = 1L;

  private transient BenchView view;
  private transient BenchView.Laid drawn;
  private transient LongScene scene;
  private double hoverPx = Double.NaN;

  StagePicture() {
    super("stage", new Dimension(900, 340));
    MouseAdapter reader =
        new MouseAdapter() {
          @Override
          public void mouseMoved(MouseEvent e) {
            hoverPx = inPicture(e.getX());
            repaint();
          }

          @Override
          public void mouseExited(MouseEvent e) {
            hoverPx = Double.NaN;
            repaint();
          }
        };
    addMouseMotionListener(reader);
    addMouseListener(reader);
  }

  void show(BenchView next) {
    view = next;
    if (next.shaft() == null) {
      drawn = null;
      scene = null;
    } else if (!next.shaft().equals(drawn)) {
      drawn = next.shaft();
      scene =
          LongScene.of(
              drawn.taper(), drawn.setUp(), drawn.modulusToShearRatio(), drawn.greatestBendMm());
    }
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D whole) {
    if (view == null) {
      return;
    }
    Rectangle2D area =
        new Rectangle2D.Double(1, 0, whole.getWidth() - 2, whole.getHeight()); // outlines' width
    LongDrawing drawing = new LongDrawing(Theme.style());
    String instruction = view.phase().instruction();
    if (scene == null) {
      drawing.paintEmpty(g, area, instruction, view.shownDetail());
      return;
    }
    BenchView.HeadReading now = view.reading();
    LongScene.Moment moment =
        new LongScene.Moment(
            instruction, view.shownDetail(), now.loadN(), now.deflectionMm(), now.bendMm());
    double hoverMm = Double.isNaN(hoverPx) ? Double.NaN : LongDrawing.placeMm(area, scene, hoverPx);
    drawing.paint(g, area, scene.showing(moment), hoverMm);
  }

  @Override
  protected String describe() {
    if (view == null) {
      return "";
    }
    return view.phase().instruction()
        + ", "
        + view.shownDetail()
        + ". Load "
        + Figures.rounded(view.reading().loadN(), 2)
        + " N, deflection "
        + Figures.rounded(view.reading().deflectionMm(), 2)
        + " mm.";
  }
}
