package sagwright.screen;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.junit.jupiter.api.Test;

class StallWatchTest {
  private static StallWatch watch() throws Exception {
    StallWatch[] watch = new StallWatch[1];
    SwingUtilities.invokeAndWait(() -> watch[0] = StallWatch.begin(Duration.ofMillis(50)));
    return watch[0];
  }

  /** What was handled is counted before the next event is. */
  private static void settle() throws Exception {
    SwingUtilities.invokeAndWait(() -> {});
    SwingUtilities.invokeAndWait(() -> {});
  }

  @Test
  void seesAnEventThatWaits() throws Exception {
    CountDownLatch never = new CountDownLatch(1);
    try (StallWatch watch = watch()) {
      SwingUtilities.invokeAndWait(
          () -> {
            try {
              never.await(300, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
            }
          });
      settle();
      assertTrue(watch.worst().toMillis() >= 250, "on the wall " + watch.worst());
      assertTrue(watch.worstOwn().toMillis() >= 250, "by its own doing " + watch.worstOwn());
    }
  }

  @Test
  void seesAnEventThatReckons() throws Exception {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    try (StallWatch watch = watch()) {
      SwingUtilities.invokeAndWait(
          () -> {
            long end = threads.getCurrentThreadCpuTime() + Duration.ofMillis(200).toNanos();
            while (threads.getCurrentThreadCpuTime() < end) {
              Thread.onSpinWait();
            }
          });
      settle();
      assertTrue(watch.worstOwn().toMillis() >= 200, "by its own doing " + watch.worstOwn());
    }
  }

  @Test
  void timeBetweenEventsIsNobodysDoing() throws Exception {
    try (StallWatch watch = watch()) {
      settle();
      CountDownLatch later = new CountDownLatch(1);
      Timer timer = new Timer(600, e -> later.countDown());
      timer.setRepeats(false);
      timer.start();
      assertTrue(later.await(30, TimeUnit.SECONDS));
      settle();
      assertTrue(watch.events() >= 3, "events: " + watch.events());
      assertTrue(watch.worstOwn().toMillis() < 300, "by its own doing " + watch.worstOwn());
    }
  }

  @Test
  void watchesTheEventThreadAndNoOther() {
    assertThrows(IllegalStateException.class, () -> StallWatch.begin(Duration.ofMillis(50)));
  }
}
