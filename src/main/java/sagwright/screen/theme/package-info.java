/**
 * How every window looks: {@link sagwright.screen.theme.Theme} (light and dark, started in the
 * right order), {@link sagwright.screen.theme.Zoom} (everything grows with the window), and the few
 * controls of our own: {@link sagwright.screen.theme.ButtButton}, {@link
 * sagwright.screen.theme.UnderlinedField}, {@link sagwright.screen.theme.Picture}.
 *
 * <p>Knows no shaft, no run and no screen.
 */
package sagwright.screen.theme;
