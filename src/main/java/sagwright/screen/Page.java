package sagwright.screen;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import sagwright.drawing.Style;
import sagwright.screen.theme.ButtButton;
import sagwright.screen.theme.Keys;
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

  /** A head with its parts on one baseline, where the bench has its tag. */
  protected static JPanel head(String columns, JComponent... parts) {
    JPanel head =
        new JPanel(
            new MigLayout("insets 0 0 4 0, aligny bottom, hidemode 3, fillx", columns, "[]"));
    for (JComponent part : parts) {
      head.add(part, "aligny baseline, wmin 0");
    }
    return head;
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

  /** A key that does something while the page is open, whatever has the focus. */
  protected final void key(KeyStroke stroke, Runnable run) {
    Keys.bind(this, WHEN_IN_FOCUSED_WINDOW, stroke, stroke.toString(), run);
  }

  /** A letter that does something unless it is typed into a field. */
  protected final void letter(char key, Runnable run) {
    key(KeyStroke.getKeyStroke(Character.toLowerCase(key)), run);
    key(KeyStroke.getKeyStroke(Character.toUpperCase(key)), run);
  }

  /** The page has come into view; the focus goes where work begins. */
  public void opened() {}

  /** Whether something half typed would be lost with the page. */
  public boolean holdsTyping() {
    return false;
  }

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
