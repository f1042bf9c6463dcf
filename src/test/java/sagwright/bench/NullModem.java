package sagwright.bench;

import java.time.Duration;
import java.util.Arrays;

/** Two serial ports with a crossed cable between them. */
public final class NullModem implements AutoCloseable {
  private final PseudoTerminal near = PseudoTerminal.heldOpen();
  private final PseudoTerminal far = PseudoTerminal.heldOpen();

  private NullModem() {}

  public static NullModem open() {
    NullModem modem = new NullModem();
    modem.pump(modem.near, modem.far);
    modem.pump(modem.far, modem.near);
    return modem;
  }

  public String nearPath() {
    return near.path();
  }

  public String farPath() {
    return far.path();
  }

  private void pump(PseudoTerminal from, PseudoTerminal to) {
    Thread pump =
        new Thread(
            () -> {
              byte[] buffer = new byte[4096];
              try {
                while (true) {
                  int count = from.read(buffer, Duration.ofMillis(20));
                  if (count > 0) {
                    to.write(Arrays.copyOf(buffer, count));
                  }
                }
              } catch (LineLostException e) {
                return; // the cable is taken away
              }
            },
            "null-modem");
    pump.setDaemon(true);
    pump.start();
  }

  @Override
  public void close() {
    near.close();
    far.close();
  }
}
