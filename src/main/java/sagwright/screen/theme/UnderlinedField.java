package sagwright.screen.theme;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import javax.accessibility.AccessibleContext;
import javax.swing.BorderFactory;
import javax.swing.JTextField;
import sagwright.drawing.Style;

/** A text field that is only its text and a line under it: the name of what a screen is about. */
public final class UnderlinedField extends JTextField {
  private static final long serialVersionUID = 1L;
  private static final int ROOM_FOR_CARET = 6;

  private final String says;

  /**
   * @param says what it asks for, read out and shown while it is empty
   */
  public UnderlinedField(String name, String says) {
    this.says = says;
    setName(name);
    setFont(Theme.style().lettering().bold(34));
    setBorder(BorderFactory.createEmptyBorder(0, 0, 6, 0));
    setOpaque(false);
    putClientProperty("JTextField.placeholderText", says);
    putClientProperty("JTextField.selectAllOnFocusPolicy", "always");
    putClientProperty(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, says);
  }

  /** As wide as what is typed, or what it asks for. */
  @Override
  public Dimension getPreferredSize() {
    Dimension size = super.getPreferredSize();
    String widest = getText().isEmpty() ? says : getText();
    size.width = getFontMetrics(getFont()).stringWidth(widest) + ROOM_FOR_CARET;
    return size;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style style = Theme.style();
      g.setColor(isFocusOwner() ? style.palette().brass() : style.palette().ink());
      g.setStroke(new BasicStroke(isFocusOwner() ? 4f : 2f));
      double y = getHeight() - 2.0;
      g.draw(new Line2D.Double(0, y, getWidth(), y));
    } finally {
      g.dispose();
    }
  }
}
