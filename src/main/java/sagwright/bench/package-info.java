/**
 * The bench head's side of the program: a {@link sagwright.bench.ByteLine} of bytes to and from the
 * head, and the {@link sagwright.bench.Calibration} that turns counts into newtons and millimetres.
 *
 * <p>Formats: docs/contract.md, section 6. Knows no serial port, no file and no screen.
 */
package sagwright.bench;
