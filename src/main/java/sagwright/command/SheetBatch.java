package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.BadDocumentException;

/**
 * Several sheets answered one by one, in the order given: a bad one does not stop the others, and
 * the exit is the highest that any of them earned.
 */
final class SheetBatch {
  /** What is done with one sheet; gives the line to be printed. */
  interface Work {
    String answer(Path file) throws BadDocumentException, PoorRunException;
  }

  private final Console console;
  private final boolean json;

  SheetBatch(Console console, boolean json) {
    this.console = console;
    this.json = json;
  }

  int run(List<Path> files, Work work) {
    int exitCode = ExitCode.ANSWER;
    for (Path file : files) {
      try {
        console.out().println(work.answer(file));
      } catch (BadDocumentException bad) {
        exitCode = Math.max(exitCode, ExitCode.BAD_INPUT);
        refuse(files, file, bad.getMessage());
      } catch (PoorRunException poor) {
        exitCode = Math.max(exitCode, ExitCode.POOR_RUN);
        refuse(files, file, poor.getMessage());
      }
    }
    return exitCode;
  }

  private void refuse(List<Path> files, Path file, String why) {
    console.complain(file + ": " + why);
    if (json && files.size() > 1) {
      console.out().println(AnswerWriter.error(file.toString(), why));
    }
  }
}
