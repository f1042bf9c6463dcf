package sagwright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sagwright.job.SurveyShaft;
import sagwright.job.TestedSheet;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.survey.DifferentShaftsException;

/**
 * Several sheets that have one answer together. A bad one spoils it, for an answer without it would
 * be another answer: every bad one is named, and the exit is the highest that any of them earned.
 */
final class SheetsOfOneShaft {
  /** Reads one sheet, or says why not. */
  interface Reading {
    Sheet read(Path file) throws BadDocumentException, PoorRunException;
  }

  /** What is made of the survey; gives what is to be printed. */
  interface Work {
    String answer(SurveyShaft.Answer surveyed);
  }

  private final Console console;
  private final SurveyShaft survey;

  SheetsOfOneShaft(Console console, SurveyShaft survey) {
    this.console = console;
    this.survey = survey;
  }

  int run(List<Path> files, Reading reading, Work work) {
    int exitCode = ExitCode.ANSWER;
    List<TestedSheet> tested = new ArrayList<>();
    for (Path file : files) {
      try {
        tested.add(survey.evaluate(reading.read(file)));
      } catch (BadDocumentException bad) {
        exitCode = Math.max(exitCode, ExitCode.BAD_INPUT);
        console.complain(file + ": " + bad.getMessage());
      } catch (PoorRunException poor) {
        exitCode = Math.max(exitCode, ExitCode.POOR_RUN);
        console.complain(file + ": " + poor.getMessage());
      }
    }
    if (exitCode != ExitCode.ANSWER) {
      return exitCode;
    }
    try {
      console.out().println(work.answer(survey.of(tested)));
      return ExitCode.ANSWER;
    } catch (DifferentShaftsException different) {
      console.complain(files.get(different.run()) + ": " + different.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }
}
