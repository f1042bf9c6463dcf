package sagwright.command;

import java.time.Clock;
import picocli.CommandLine;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.WorkshopException;

/** All commands of the program. An error is one line on standard error, never a stack trace. */
public final class Commands {
  private final CommandLine line;

  /**
   * @param console where to read and print
   * @param benches what bench heads can be reached
   * @param windows how the window is opened
   */
  public Commands(Console console, Benches benches, Windows windows) {
    SpeciesTable species = SpeciesTable.published();
    line =
        new CommandLine(new SagwrightCommand())
            .addSubcommand(new WindowCommand(console, species, windows))
            .addSubcommand(new EvaluateCommand(console, species))
            .addSubcommand(new ForecastCommand(console, species))
            .addSubcommand(new SurveyCommand(console, species))
            .addSubcommand(new RecordCommand(console, species, benches))
            .addSubcommand(new EmulateCommand(console, species, benches))
            .addSubcommand(new ImportCommand(console, species))
            .addSubcommand(new ExportCommand(console, species))
            .addSubcommand(new BlankCommand(console))
            .addSubcommand(new GradeCommand(console, species))
            .addSubcommand(new RankCommand(console, species))
            .addSubcommand(new PromiseCommand(console))
            .addSubcommand(new AllocateCommand(console, species))
            .addSubcommand(new SalvageCommand(console, species))
            .addSubcommand(CalibrateCommand.line(console, species, Clock.systemUTC()))
            .addSubcommand(new MoistureCommand(console))
            .setOut(console.out())
            .setErr(console.err())
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setExecutionExceptionHandler(
                (failure, where, parsed) -> {
                  if (failure instanceof CommandFailure) {
                    console.complain(failure.getMessage());
                    return ((CommandFailure) failure).exitCode();
                  }
                  if (failure instanceof WorkshopException) {
                    console.complain(failure.getMessage());
                    return ExitCode.BAD_INPUT;
                  }
                  if (failure instanceof PoorRunException) {
                    console.complain(failure.getMessage());
                    return ExitCode.POOR_RUN;
                  }
                  System.getLogger(Commands.class.getName())
                      .log(System.Logger.Level.DEBUG, "unexpected", failure);
                  console.complain(
                      where.getCommandName() + ": something unexpected went wrong: " + failure);
                  return ExitCode.BAD_INPUT;
                })
            .setParameterExceptionHandler(
                (mistake, args) -> {
                  console.complain(
                      mistake.getCommandLine().getCommandName() + ": " + mistake.getMessage());
                  return ExitCode.BAD_INPUT;
                });
  }

  /** Runs one command and gives its exit code. */
  public int run(String... args) {
    int exitCode = line.execute(args);
    line.getOut().flush();
    line.getErr().flush();
    return exitCode;
  }
}
