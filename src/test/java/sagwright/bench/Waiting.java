package sagwright.bench;

import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** Waits for a condition with a deadline that only a fault reaches. */
public final class Waiting {
  public static final Duration DEADLINE = Duration.ofSeconds(30);

  private Waiting() {}

  public static void until(BooleanSupplier condition, Supplier<String> otherwise) {
    long end = System.nanoTime() + DEADLINE.toNanos();
    while (!condition.getAsBoolean()) {
      if (System.nanoTime() > end) {
        fail("never came true: " + otherwise.get());
      }
      try {
        Thread.sleep(2);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        fail("interrupted");
      }
    }
  }

  public static <T> T on(CompletableFuture<T> future)
      throws InterruptedException, ExecutionException, TimeoutException {
    return future.get(DEADLINE.toSeconds(), TimeUnit.SECONDS);
  }
}
