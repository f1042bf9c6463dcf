package sagwright.bench;

import java.util.List;

/** Passes everything on to several listeners, in their order. */
final class WireTee implements WireListener {
  private final List<WireListener> listeners;

  WireTee(WireListener... listeners) {
    this.listeners = List.of(listeners);
  }

  @Override
  public void raw(byte[] bytes) {
    listeners.forEach(l -> l.raw(bytes));
  }

  @Override
  public void reading(Reading reading, long micros) {
    listeners.forEach(l -> l.reading(reading, micros));
  }

  @Override
  public void gap(int missing) {
    listeners.forEach(l -> l.gap(missing));
  }

  @Override
  public void restarted() {
    listeners.forEach(WireListener::restarted);
  }

  @Override
  public void refused(Refusal why, String line) {
    listeners.forEach(l -> l.refused(why, line));
  }

  @Override
  public void answered(HeadAnswer answer) {
    listeners.forEach(l -> l.answered(answer));
  }
}
