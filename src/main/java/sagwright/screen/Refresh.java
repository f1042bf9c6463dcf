package sagwright.screen;

import java.util.function.Consumer;
import javax.swing.Timer;

/** Looks into a mailbox twenty times a second, on the event thread, and shows what is new. */
public final class Refresh<T> {
  /** 20 a second: smooth to the eye, light for the machine. */
  private static final int EVERY_MS = 50;

  private final Mailbox<T> mailbox;
  private final Consumer<T> show;
  private final Timer timer;
  private T shown;

  public Refresh(Mailbox<T> mailbox, Consumer<T> show) {
    this.mailbox = mailbox;
    this.show = show;
    this.timer = new Timer(EVERY_MS, e -> now());
  }

  /** Shows the newest view now, if it is not shown already. */
  @SuppressWarnings("ReferenceEquality") // the same object is the same view: nothing to draw
  public void now() {
    T newest = mailbox.newest();
    if (newest != shown) {
      shown = newest;
      show.accept(newest);
    }
  }

  public void start() {
    now();
    timer.start();
  }

  public void stop() {
    timer.stop();
  }
}
