/**
 * The Choose screen: all blanks held against one order, best first, on one plank of ash; a few of
 * them closely; one promised, and taken back by one key. {@link
 * sagwright.screen.choose.ChooseScreen} shows {@link sagwright.screen.choose.ChooseView}s and asks
 * through {@link sagwright.screen.choose.ChooseActions}; {@link sagwright.screen.choose.ChooseDesk}
 * stands behind it.
 */
package sagwright.screen.choose;
