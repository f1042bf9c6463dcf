/**
 * The command line: one class a command, exit codes, one-line errors. {@link
 * sagwright.command.Commands} is the entry.
 *
 * <p>Sole user of picocli. Reads arguments, calls a job, prints its answer; works nothing out.
 */
package sagwright.command;
