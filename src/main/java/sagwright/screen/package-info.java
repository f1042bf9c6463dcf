/**
 * The window: {@link sagwright.screen.MainWindow} holds a {@link sagwright.screen.Shell} (the rail
 * and the open page), each screen is a {@link sagwright.screen.Page} in a package of its own.
 *
 * <p>A screen draws an immutable view and calls an interface of its own (its <i>actions</i>); what
 * they mean is worked out elsewhere. Views are put into a {@link sagwright.screen.Mailbox} by any
 * thread and taken out on the event thread; nothing here waits.
 */
package sagwright.screen;
