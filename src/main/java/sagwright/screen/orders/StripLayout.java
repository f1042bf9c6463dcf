package sagwright.screen.orders;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import sagwright.screen.finish.PlanPicture;

/** A picture over the whole width, and small actions on the foot of its third column. */
record StripLayout(PlanPicture picture, Component keys) implements LayoutManager {
  @Override
  public void addLayoutComponent(String name, Component part) {
    // both are known
  }

  @Override
  public void removeLayoutComponent(Component part) {
    // both stay
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    return picture.getPreferredSize();
  }

  @Override
  public Dimension minimumLayoutSize(Container parent) {
    return picture.getMinimumSize();
  }

  @Override
  public void layoutContainer(Container parent) {
    picture.setBounds(0, 0, parent.getWidth(), parent.getHeight());
    Dimension size = keys.getPreferredSize();
    int left = (int) Math.round(PlanPicture.thirdColumn(parent.getWidth())) - 6;
    keys.setBounds(left, parent.getHeight() - size.height, parent.getWidth() - left, size.height);
  }
}
