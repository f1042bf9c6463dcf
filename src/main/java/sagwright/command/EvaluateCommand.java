package sagwright.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Evaluator;
import sagwright.modulus.MonteCarlo;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;

@Command(
    name = "evaluate",
    mixinStandardHelpOptions = true,
    description = "From the run in each sheet to a stiffness and a modulus.")
final class EvaluateCommand implements Callable<Integer> {
  @Parameters(arity = "1..*", paramLabel = "SHEET.json", description = "sheets to work out")
  private List<Path> files;

  @Option(names = "--json", description = "one JSON object on one line for each sheet")
  private boolean json;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description = "a second opinion on the uncertainty from N Monte Carlo draws")
  private Integer draws;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "of the draws (${DEFAULT-VALUE})")
  private long seed;

  private final Console console;
  private final SheetReader reader;
  private final Evaluator evaluator;

  EvaluateCommand(Console console, SpeciesTable species) {
    this.console = console;
    this.reader = new SheetReader(species);
    this.evaluator = new Evaluator(species);
  }

  @Override
  public Integer call() throws CommandFailure {
    if (draws != null && (draws < LEAST_DRAWS || draws > MOST_DRAWS)) {
      throw CommandFailure.badInput(
          "--draws: " + draws + " is not between " + LEAST_DRAWS + " and " + MOST_DRAWS);
    }
    return new SheetBatch(console, json).run(files, this::answer);
  }

  /** Below this a 95 % interval has no meaning. */
  private static final int LEAST_DRAWS = 100;

  private static final int MOST_DRAWS = 50_000_000;

  private String answer(Path file) throws BadDocumentException, PoorRunException {
    Sheet sheet = reader.readFile(file).requireRun();
    Evaluation evaluation = evaluator.evaluate(sheet.bendTest());
    if (draws == null) {
      return json
          ? AnswerWriter.evaluation(sheet, evaluation)
          : EvaluationTable.of(sheet, evaluation);
    }
    MonteCarlo second = MonteCarlo.of(sheet.bendTest(), evaluation.fit(), draws, seed);
    return json
        ? AnswerWriter.evaluation(sheet, evaluation, second)
        : EvaluationTable.of(sheet, evaluation) + EvaluationTable.secondOpinion(second);
  }
}
