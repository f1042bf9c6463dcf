/**
 * The bench head's firmware, unchanged, on a simulated processor with a simulated bench around it.
 *
 * <p>{@link sagwright.firmware.BuiltFirmware} builds {@code firmware-notes/} once and hands a
 * {@link sagwright.firmware.Simulation} to each test; {@link sagwright.firmware.HeadStream} is what
 * the head sent, read by a small reader of the tests' own, so that the program's reader is not its
 * own judge.
 */
package sagwright.firmware;
