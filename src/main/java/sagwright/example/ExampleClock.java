package sagwright.example;

import java.time.Instant;
import java.time.InstantSource;

/** The time that the example is at while it is written down. One thread. */
final class ExampleClock implements InstantSource {
  private Instant now;

  ExampleClock(Instant now) {
    this.now = now;
  }

  void set(Instant to) {
    now = to;
  }

  @Override
  public Instant instant() {
    return now;
  }
}
