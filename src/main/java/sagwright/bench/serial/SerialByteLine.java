package sagwright.bench.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicBoolean;
import sagwright.bench.ByteLine;
import sagwright.bench.LineLostException;

/**
 * An open serial port. Reads step in tenths of a second, as jSerialComm's time-outs do on Linux.
 */
final class SerialByteLine implements ByteLine {
  static final int READ_STEP_MILLIS = 100;
  private static final Duration CLOSE_DEADLINE = Duration.ofSeconds(2);

  private final SerialPort port;
  private final String path;
  private final AtomicBoolean isClosed = new AtomicBoolean();
  private volatile boolean isLost;

  SerialByteLine(SerialPort port, String path) {
    this.port = port;
    this.path = path;
  }

  @Override
  public String description() {
    return path;
  }

  @Override
  public int read(byte[] into, Duration deadline) throws LineLostException {
    long end = System.nanoTime() + deadline.toNanos();
    while (true) {
      requireOpen();
      int count = port.readBytes(into, into.length);
      if (count > 0) {
        return count;
      }
      if (count < 0) {
        isLost = true;
        requireOpen();
      }
      if (System.nanoTime() >= end) {
        return 0;
      }
    }
  }

  @Override
  public void write(byte[] bytes) throws LineLostException {
    int sent = 0;
    while (sent < bytes.length) {
      requireOpen();
      byte[] rest = Arrays.copyOfRange(bytes, sent, bytes.length);
      int count = port.writeBytes(rest, rest.length);
      if (count <= 0) {
        // A port that was pulled out takes nothing, and says 0, not an error.
        isLost = true;
      } else {
        sent += count;
      }
    }
    requireOpen();
  }

  private void requireOpen() throws LineLostException {
    if (isClosed.get()) {
      throw new LineLostException("the port " + path + " is closed");
    }
    if (isLost) {
      throw new LineLostException(
          "the bench head on " + path + " is gone: is its plug out? Put it back in");
    }
  }

  @Override
  public void close() {
    if (isClosed.getAndSet(true)) {
      return;
    }
    // Drivers of devices that are gone have been seen to hold a close for ever.
    Thread closer = new Thread(port::closePort, "port-closer");
    closer.setDaemon(true);
    closer.start();
    try {
      closer.join(CLOSE_DEADLINE.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
