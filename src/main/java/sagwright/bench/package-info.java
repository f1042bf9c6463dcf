/**
 * The bench head's side of the program. {@link sagwright.bench.HeadSession} holds the line to a
 * head and leads tests; underneath, bytes from a {@link sagwright.bench.ByteLine} go through {@link
 * sagwright.bench.WireReader} to a {@link sagwright.bench.TestWalk}, whose outcome is a {@link
 * sagwright.bench.RecordedRun}. {@link sagwright.bench.Calibration} turns counts into newtons and
 * millimetres.
 *
 * <p>Formats: docs/contract.md, section 6. Only the session has a thread; everything under it is
 * fed by hand. Knows no serial port, no file and no screen.
 */
package sagwright.bench;
