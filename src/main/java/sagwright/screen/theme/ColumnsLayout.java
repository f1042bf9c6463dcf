package sagwright.screen.theme;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.function.Function;

/** Columns side by side, each with its share of the width, whatever is in them. */
public final class ColumnsLayout implements LayoutManager {
  private final double gapShare;
  private final double[] shares;

  /**
   * @param gapShare of the width, between each two columns
   * @param shares of the width that is left, one a column; they are scaled to fill it
   */
  public ColumnsLayout(double gapShare, double... shares) {
    this.gapShare = gapShare;
    this.shares = shares.clone();
  }

  @Override
  public void layoutContainer(Container parent) {
    double sum = 0;
    for (double share : shares) {
      sum += share;
    }
    double gap = gapShare * parent.getWidth();
    double room = parent.getWidth() - gap * (shares.length - 1);
    double x = 0;
    for (int i = 0; i < parent.getComponentCount(); i++) {
      double width = room * shares[i] / sum;
      parent
          .getComponent(i)
          .setBounds(
              (int) Math.round(x),
              0,
              (int) (Math.round(x + width) - Math.round(x)),
              parent.getHeight());
      x += width + gap;
    }
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    return size(parent, Component::getPreferredSize);
  }

  @Override
  public Dimension minimumLayoutSize(Container parent) {
    return size(parent, Component::getMinimumSize);
  }

  private static Dimension size(Container parent, Function<Component, Dimension> of) {
    int width = 0;
    int height = 0;
    for (Component column : parent.getComponents()) {
      Dimension size = of.apply(column);
      width += size.width;
      height = Math.max(height, size.height);
    }
    return new Dimension(width, height);
  }

  @Override
  public void addLayoutComponent(String name, Component component) {
    // told by its place alone
  }

  @Override
  public void removeLayoutComponent(Component component) {
    // told by its place alone
  }
}
