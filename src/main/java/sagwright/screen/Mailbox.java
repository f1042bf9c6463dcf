package sagwright.screen;

import java.util.concurrent.atomic.AtomicReference;

/**
 * Where the newest view of a screen lies. Any thread may put one in; a view that was not looked at
 * is replaced by the next: pictures are dropped, never readings. Safe for all threads.
 *
 * @param <T> an immutable view
 */
public final class Mailbox<T> {
  private final AtomicReference<T> newest;

  public Mailbox(T first) {
    newest = new AtomicReference<>(first);
  }

  public void put(T view) {
    newest.set(view);
  }

  public T newest() {
    return newest.get();
  }
}
