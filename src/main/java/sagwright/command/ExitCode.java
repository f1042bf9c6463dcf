package sagwright.command;

/** What a command's exit says (docs/contract.md, section 4). */
final class ExitCode {
  static final int ANSWER = 0;

  /** Something of what was given is wrong: a file, a key, an option. */
  static final int BAD_INPUT = 2;

  /** The run is too poor to give an answer. */
  static final int POOR_RUN = 3;

  private ExitCode() {}
}
