package sagwright.screen;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import javax.swing.JComponent;
import javax.swing.JPanel;
import sagwright.drawing.Style;
import sagwright.screen.theme.ButtButton;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.Zoom;

/**
 * One screen: a head with what it is about, a body, a foot with what keeps people safe at the left
 * and the one large control in the right corner. All pages share these places.
 */
public abstract class Page extends JPanel implements Zoom.Zoomed {
  private static final long serialVersionUID = 1L;
  private static final int LEFT = 16;
  private static final int RIGHT = 24;
  private static final int HEAD = 64;
  private static final int BODY_TOP = 68;
  private static final int FOOT = 80;

  private final String word;
  private final Foot foot = new Foot();
  private final ButtButton control;
  private JComponent head;
  private JComponent body;
  private JComponent question;
  private double zoom = 1;

  /**
   * @param word how the rail calls it
   */
  protected Page(String word) {
    this.word = word;
    this.control = new ButtButton(word + ".control");
    setName(word);
    setLayout(null);
    getAccessibleContext().setAccessibleName(word);
  }

  /** Fills the page; called once by the screen's constructor. */
  protected final void fill(JComponent headWith, JComponent bodyWith) {
    head = headWith;
    body = bodyWith;
    add(head);
    add(body);
    add(foot);
    add(control);
  }

  /** Something to be answered in the foot's place, left of the control; null to take it away. */
  protected final void ask(JComponent with) {
    if (question != null) {
      remove(question);
    }
    question = with;
    foot.setVisible(with == null);
    if (with != null) {
      add(with);
      Zoom.apply(with, zoom);
    }
    revalidate();
    repaint();
  }

  public final String word() {
    return word;
  }

  protected final Foot foot() {
    return foot;
  }

  protected final ButtButton control() {
    return control;
  }

  /** The page has come into view; the focus goes where work begins. */
  public void opened() {}

  /** Another page has taken its place. */
  public void left() {}

  @Override
  public final void zoomTo(double to) {
    zoom = to;
    revalidate();
  }

  @Override
  public void doLayout() {
    int left = px(LEFT);
    int width = getWidth() - left - px(RIGHT);
    int footTop = getHeight() - px(FOOT);
    head.setBounds(left, 0, width, px(HEAD));
    body.setBounds(left, px(BODY_TOP), width, footTop - px(BODY_TOP) - px(2));
    int controlWidth = control.getPreferredSize().width;
    int controlHeight = control.getPreferredSize().height;
    control.setBounds(left + width - controlWidth, footTop + px(10), controlWidth, controlHeight);
    int room = width - controlWidth - px(20);
    foot.setBounds(left, footTop + px(2), room, px(FOOT - 4));
    if (question != null) {
      question.setBounds(left, footTop + px(2), room, px(FOOT - 4));
    }
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    Graphics2D g = (Graphics2D) graphics.create();
    try {
      Style.smooth(g);
      g.setColor(Theme.style().palette().ink());
      g.setStroke(new BasicStroke((float) (1.6 * zoom)));
      double y = getHeight() - FOOT * zoom;
      g.draw(new Line2D.Double(px(LEFT), y, getWidth() - px(RIGHT), y));
    } finally {
      g.dispose();
    }
  }

  private int px(int atZoomOne) {
    return (int) Math.round(atZoomOne * zoom);
  }
}
