package sagwright.bench.serial;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import sagwright.bench.ByteLine;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;

/**
 * Opens one serial port, 8N1 without flow control: each time as a new port object, for an old one
 * goes on pointing to a device that was unplugged.
 *
 * <p>What the system has kept of what the head sent before is not thrown away: it may be the rest
 * before the load, from a head that sends unasked and began while the program was starting.
 */
public final class SerialLineOpener implements LineOpener {
  private static final int DATA_BITS = 8;

  private final String path;
  private final int baud;

  /**
   * @param path as the system names the port: /dev/ttyUSB0, COM3; a link to one is followed anew at
   *     each opening
   */
  public SerialLineOpener(String path, int baud) {
    this.path = path;
    this.baud = baud;
  }

  @Override
  public String description() {
    return path;
  }

  @Override
  public ByteLine open() throws LineNotOpenedException {
    SerialPort port;
    try {
      port = SerialPort.getCommPort(path);
    } catch (SerialPortInvalidPortException e) {
      throw new LineNotOpenedException(OpeningFailure.nothingThere(path));
    }
    port.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    port.setComPortTimeouts(
        SerialPort.TIMEOUT_READ_SEMI_BLOCKING, SerialByteLine.READ_STEP_MILLIS, 0);
    if (!port.openPort()) {
      throw new LineNotOpenedException(
          OpeningFailure.inWords(path, port.getLastErrorCode(), System.getProperty("os.name")));
    }
    return new SerialByteLine(port, path);
  }
}
