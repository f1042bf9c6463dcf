package sagwright.screen;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

class StallWatchTest {
  @Test
  void seesAnEventThreadThatStandsStill() throws Exception {
    StallWatch[] watch = new StallWatch[1];
    SwingUtilities.invokeAndWait(() -> watch[0] = StallWatch.begin(Duration.ofMillis(50)));
    CountDownLatch never = new CountDownLatch(1);
    try (StallWatch watching = watch[0]) {
      SwingUtilities.invokeAndWait(
          () -> {
            try {
              never.await(300, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
            }
          });
      long end = System.nanoTime() + Duration.ofSeconds(10).toNanos();
      while (watching.worst().toMillis() < 150) {
        assertTrue(System.nanoTime() < end, "the stall was not seen: " + watching.worst());
        Thread.onSpinWait();
      }
    }
  }

  @Test
  void watchesTheEventThreadAndNoOther() {
    assertThrows(IllegalStateException.class, () -> StallWatch.begin(Duration.ofMillis(50)));
  }
}
