package sagwright.command;

/** Ends a command with one line on standard error and an exit code. */
public final class CommandFailure extends Exception {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  CommandFailure(int exitCode, String line) {
    super(line);
    this.exitCode = exitCode;
  }

  public static CommandFailure badInput(String line) {
    return new CommandFailure(ExitCode.BAD_INPUT, line);
  }

  static CommandFailure poorRun(String line) {
    return new CommandFailure(ExitCode.POOR_RUN, line);
  }

  int exitCode() {
    return exitCode;
  }
}
