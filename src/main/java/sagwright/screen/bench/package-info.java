/**
 * The bench screen: {@link sagwright.screen.bench.BenchScreen} draws a {@link
 * sagwright.screen.bench.BenchView} and calls {@link sagwright.screen.bench.BenchActions}.
 *
 * <p>Knows how a test looks and sounds, not how it is done.
 */
package sagwright.screen.bench;
