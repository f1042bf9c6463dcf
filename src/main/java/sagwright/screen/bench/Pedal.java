package sagwright.screen.bench;

/** Space, which a foot may press: a pedal bounces, a held key repeats. */
final class Pedal {
  /** No second press counts within so long. */
  private static final long REST_NS = 400_000_000;

  private boolean isDown;
  private long lastNs = System.nanoTime() - REST_NS;

  /**
   * It went down.
   *
   * @param isHeeded whether a press means anything now: one that does not needs no rest after it
   * @return whether that is a press that counts
   */
  boolean press(boolean isHeeded) {
    long now = System.nanoTime();
    boolean bounced = isDown || now - lastNs < REST_NS;
    isDown = true;
    if (bounced || !isHeeded) {
      return false;
    }
    lastNs = now;
    return true;
  }

  void letGo() {
    isDown = false;
  }
}
