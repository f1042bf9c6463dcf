package sagwright.screen;

import com.formdev.flatlaf.FlatLaf;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JFrame;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.Zoom;

/** The one window of the program. Made and used on the event thread, after a theme is installed. */
public final class MainWindow extends JFrame {
  private static final long serialVersionUID = 1L;
  private static final Dimension LEAST = new Dimension(1100, 680);

  /**
   * @param title names the workshop
   * @param whenClosed called once, on the event thread, when the window has gone
   */
  public MainWindow(String title, Shell shell, Runnable whenClosed) {
    super(title);
    setName("window");
    setContentPane(shell);
    setDefaultCloseOperation(DISPOSE_ON_CLOSE);
    addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowOpened(WindowEvent e) {
            shell.openPage().opened(); // now that there is a focus to be had
          }

          @Override
          public void windowClosed(WindowEvent e) {
            shell.closing();
            whenClosed.run();
          }
        });
    setMinimumSize(LEAST);
    shell.setPreferredSize(new Dimension(Zoom.WIDTH, Zoom.HEIGHT));
    pack();
    Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
    if (screen.width <= getWidth() || screen.height <= getHeight()) {
      setExtendedState(MAXIMIZED_BOTH);
    }
    setLocationRelativeTo(null);
  }

  /** Changes the theme while the window is open. */
  public void wear(Theme theme) {
    theme.install();
    FlatLaf.updateUI();
  }
}
