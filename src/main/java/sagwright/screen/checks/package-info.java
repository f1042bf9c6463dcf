/**
 * The checks: {@link sagwright.screen.checks.ChecksScreen} shows what is due and leads through the
 * calibrations, one card each. It draws a {@link sagwright.screen.checks.ChecksView} and calls
 * {@link sagwright.screen.checks.ChecksActions}; {@link sagwright.screen.checks.ChecksDesk} stands
 * behind it.
 */
package sagwright.screen.checks;
