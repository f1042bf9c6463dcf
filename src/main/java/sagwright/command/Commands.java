package sagwright.command;

import java.time.Clock;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.WorkshopException;

/** All commands of the program. An error is one line on standard error, never a stack trace. */
public final class Commands {
  private static final List<String> NAMES =
      List.of(
          "window",
          "evaluate",
          "forecast",
          "survey",
          "record",
          "emulate",
          "import",
          "export",
          "blank",
          "grade",
          "rank",
          "promise",
          "allocate",
          "salvage",
          "calibrate",
          "moisture");

  private static final Set<String> ON_A_WORKSHOP =
      Set.of(
          "record", "import", "export", "blank", "grade", "rank", "promise", "allocate", "salvage");

  private final Console console;
  private final Benches benches;
  private final Windows windows;
  private final SpeciesTable species = SpeciesTable.published();

  /**
   * @param console where to read and print
   * @param benches what bench heads can be reached
   * @param windows how the window is opened
   */
  public Commands(Console console, Benches benches, Windows windows) {
    this.console = console;
    this.benches = benches;
    this.windows = windows;
  }

  /** Whether a command is named that opens a workshop; said without making anything. */
  public static boolean workOnWorkshop(String... args) {
    return args.length > 0 && ON_A_WORKSHOP.contains(args[0]);
  }

  private Object command(String name) {
    return switch (name) {
      case "window" -> new WindowCommand(console, species, windows);
      case "evaluate" -> new EvaluateCommand(console, species);
      case "forecast" -> new ForecastCommand(console, species);
      case "survey" -> new SurveyCommand(console, species);
      case "record" -> new RecordCommand(console, species, benches);
      case "emulate" -> new EmulateCommand(console, species, benches);
      case "import" -> new ImportCommand(console, species);
      case "export" -> new ExportCommand(console, species);
      case "blank" -> new BlankCommand(console);
      case "grade" -> new GradeCommand(console, species);
      case "rank" -> new RankCommand(console, species);
      case "promise" -> new PromiseCommand(console);
      case "allocate" -> new AllocateCommand(console, species);
      case "salvage" -> new SalvageCommand(console, species);
      case "calibrate" -> CalibrateCommand.line(console, species, Clock.systemUTC());
      case "moisture" -> new MoistureCommand(console);
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** Runs one command and gives its exit code. */
  public int run(String... args) {
    CommandLine line = line(args);
    int exitCode = line.execute(args);
    line.getOut().flush();
    line.getErr().flush();
    return exitCode;
  }

  /** Only the command that is named is made, so that it starts the sooner; all where none is. */
  CommandLine line(String... args) {
    CommandLine line = new CommandLine(new SagwrightCommand());
    for (String name : args.length > 0 && NAMES.contains(args[0]) ? List.of(args[0]) : NAMES) {
      line.addSubcommand(name, command(name));
    }
    return line.setOut(console.out())
        .setErr(console.err())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler((failure, where, parsed) -> failed(failure, where))
        .setParameterExceptionHandler(
            (mistake, parsed) -> {
              console.complain(
                  mistake.getCommandLine().getCommandName() + ": " + mistake.getMessage());
              return ExitCode.BAD_INPUT;
            });
  }

  private int failed(Exception failure, CommandLine where) {
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
    console.complain(where.getCommandName() + ": something unexpected went wrong: " + failure);
    return ExitCode.BAD_INPUT;
  }
}
