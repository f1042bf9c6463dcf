/**
 * The rack: {@link sagwright.screen.rack.RackScreen} lists the blanks, enters them and shows the
 * record of one as a time line. It draws a {@link sagwright.screen.rack.RackView} and calls {@link
 * sagwright.screen.rack.RackActions}.
 *
 * <p>Knows how a blank is written down, not where it is kept.
 */
package sagwright.screen.rack;
