/**
 * What is seen before a workshop is open: {@link sagwright.screen.start.StartScreen} offers the
 * workshops that there are, and practice.
 */
package sagwright.screen.start;
