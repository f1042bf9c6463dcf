package sagwright.screen;

import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** How a form hears what became of what it sent. May be called from any thread, once. */
public interface Reply {
  /** It is kept. */
  void done();

  /**
   * It is not, and nothing was changed.
   *
   * @param why one line for people
   */
  void refused(String why);

  /** A reply that is heard on the event thread, whatever thread gives it. */
  static Reply onEventThread(Runnable whenDone, Consumer<String> whenRefused) {
    return new Reply() {
      @Override
      public void done() {
        SwingUtilities.invokeLater(whenDone);
      }

      @Override
      public void refused(String why) {
        SwingUtilities.invokeLater(() -> whenRefused.accept(why));
      }
    };
  }
}
