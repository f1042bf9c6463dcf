package sagwright.bench;

import java.time.Duration;

/**
 * How long a session waits for a head.
 *
 * @param answer for the answer to {@code *IDN?} before it asks for readings
 * @param askAgain before a head that sends no readings is asked again; one that restarts when its
 *     line is opened is deaf for a second or two
 * @param silence without a reading after which a line that has carried some counts as lost
 * @param reopen before a line that is gone is tried again
 */
public record HeadTiming(Duration answer, Duration askAgain, Duration silence, Duration reopen) {
  public static final HeadTiming ORDINARY =
      new HeadTiming(
          Duration.ofMillis(300),
          Duration.ofMillis(1000),
          Duration.ofSeconds(5),
          Duration.ofMillis(700));
}
