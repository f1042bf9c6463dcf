package sagwright.screen.checks;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import sagwright.drawing.CalibrationPlot;
import sagwright.drawing.CalibrationScene;
import sagwright.screen.theme.Picture;
import sagwright.screen.theme.Theme;

/** The points of a calibration on their line, and what they miss it by. */
final class CalibrationPicture extends Picture {
  private static final long serialVersionUID = 1L;

  private final boolean isLoad;
  private transient ChecksView.Line line = ChecksView.Line.NONE;

  CalibrationPicture(String name, boolean isLoad) {
    super(name, new Dimension(420, 300));
    this.isLoad = isLoad;
  }

  void show(ChecksView.Line next) {
    line = next;
    repaint();
  }

  @Override
  protected void paint(Graphics2D g, Rectangle2D area) {
    new CalibrationPlot(Theme.style())
        .paint(g, area, new CalibrationScene(line.points(), line.line(), isLoad));
  }

  @Override
  protected String describe() {
    return line.points().size() + " points" + (line.line() == null ? ", no line yet" : "");
  }
}
