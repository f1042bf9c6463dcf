/**
 * Bench heads on serial ports: {@link sagwright.bench.serial.SerialPorts} lists and finds them,
 * {@link sagwright.bench.serial.SerialLineOpener} opens one as a {@link sagwright.bench.ByteLine},
 * {@link sagwright.bench.serial.FoundPortOpener} one that may have moved.
 *
 * <p>Sole user of jSerialComm. Knows bytes only: neither lines nor readings.
 */
package sagwright.bench.serial;
