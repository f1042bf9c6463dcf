package sagwright.command;

import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.ByteLine;
import sagwright.bench.Calibration;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.bench.LineNotOpenedException;
import sagwright.bench.LineOpener;
import sagwright.job.BlankShaft;
import sagwright.job.GradeAgain;
import sagwright.job.GradeBlank;
import sagwright.job.RecordTest;
import sagwright.job.RunAnswer;
import sagwright.job.SafeLoad;
import sagwright.job.TestSetting;
import sagwright.job.TestedRun;
import sagwright.modulus.Evaluation;
import sagwright.modulus.Evaluator;
import sagwright.run.PoorRunException;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.DocumentText;
import sagwright.sheet.JsonLine;
import sagwright.sheet.SetUpDocument;
import sagwright.sheet.SetUpReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    description = {
      "One whole test from a bench head: zero, loading, unloading, answer, stored.",
      "Ends by itself when the load is back off. A bent shaft can snap: eye protection on, stand"
          + " aside of it."
    })
final class RecordCommand implements Callable<Integer> {
  @Mixin private PortOption port;

  @Mixin private WorkshopOption workshopOption;

  @Option(names = "--blank", required = true, paramLabel = "TAG", description = "what lies there")
  private String tag;

  @Mixin private CalibrationOption calibration;

  @Option(
      names = "--setup",
      required = true,
      paramLabel = "FILE",
      description = "where supports, load and gauge stand")
  private Path setUpFile;

  @Option(names = "--order", paramLabel = "ID", description = "grade it against this order, too")
  private String orderNumber;

  @Option(
      names = "--timeout",
      paramLabel = "SECONDS",
      defaultValue = "60",
      description = "the longest that the test may take (${DEFAULT-VALUE})")
  private double timeoutS;

  @Option(names = "--json", description = "one JSON object on one line")
  private boolean json;

  private final Console console;
  private final SpeciesTable species;
  private final Benches benches;

  RecordCommand(Console console, SpeciesTable species, Benches benches) {
    this.console = console;
    this.species = species;
    this.benches = benches;
  }

  @Override
  public Integer call() throws CommandFailure, WorkshopException, InterruptedException {
    if (!(timeoutS > 0 && timeoutS <= 86_400)) {
      throw CommandFailure.badInput("--timeout: " + timeoutS + " is not between 0 and 86400");
    }
    try (Workshop workshop = workshopOption.open()) {
      workshop.requireReal();
      Blank blank = workshop.blanks().require(tag);
      WorkshopOrder order = orderNumber == null ? null : workshop.orders().require(orderNumber);
      TestSetting setting = setting(workshop, blank, order);
      Run run = record(workshop, setting);
      if (run.outcome().answer() == null) {
        throw CommandFailure.poorRun(
            tag + ": " + run.outcome().noAnswer() + "; kept as run " + run.id());
      }
      console.out().println(answer(workshop, setting, run));
      return ExitCode.ANSWER;
    }
  }

  private TestSetting setting(Workshop workshop, Blank blank, WorkshopOrder order)
      throws CommandFailure, WorkshopException {
    Calibration inForce = calibration.read();
    BlankShaft shafts = new BlankShaft(workshop, species);
    double lengthMm = shafts.now(blank).shaft().taper().lengthMm();
    SetUpDocument setUp;
    try {
      setUp = SetUpReader.read(DocumentText.ofFile(setUpFile), lengthMm);
    } catch (BadDocumentException bad) {
      throw CommandFailure.badInput(setUpFile + ": " + bad.getMessage());
    }
    return new TestSetting(blank, shafts.onBench(blank, setUp, inForce), inForce, order);
  }

  private Run record(Workshop workshop, TestSetting setting)
      throws CommandFailure, WorkshopException, InterruptedException {
    ExecutorService work = Executors.newSingleThreadExecutor(task -> new Thread(task, "work"));
    RecordTest recordTest =
        new RecordTest(
            workshop,
            species,
            new SafeLoad(species, SafeStress.ASSUMED_SHARE),
            InstantSource.system(),
            work);
    Instructions instructions = new Instructions(console, json);
    try (ByteLine line = port.opener(benches).open();
        HeadSession session =
            HeadSession.once(new OpenLine(line), HeadTiming.ORDINARY, instructions)) {
      return recordTest.begin(session, setting, Duration.ofMillis((long) (timeoutS * 1000))).get();
    } catch (LineNotOpenedException notOpened) {
      throw CommandFailure.badInput("--port: " + notOpened.getMessage());
    } catch (ExecutionException failure) {
      if (failure.getCause() instanceof WorkshopException ofWorkshop) {
        throw ofWorkshop;
      }
      throw new IllegalStateException(failure.getCause());
    } finally {
      work.shutdown();
    }
  }

  private String answer(Workshop workshop, TestSetting setting, Run run)
      throws WorkshopException, CommandFailure {
    try {
      GradeBlank.Graded graded =
          setting.order() == null
              ? null
              : new GradeBlank(workshop, species)
                  .grade(setting.blank().tag(), setting.order().number());
      new GradeAgain(workshop, species).of(setting.blank()); // for its other orders
      if (json) {
        JsonLine answer = RunAnswer.of(run);
        return (graded == null ? answer : answer.putJson("grade", graded.json())).toString();
      }
      String text = table(workshop, run);
      return graded == null
          ? text
          : text + ForecastTable.of(setting.blank().tag(), graded.graded());
    } catch (PoorRunException poor) {
      throw CommandFailure.poorRun(poor.getMessage());
    }
  }

  private String table(Workshop workshop, Run run) throws WorkshopException, PoorRunException {
    try {
      Sheet sheet = new SheetReader(species).read(workshop.runs().sheet(run));
      Evaluation evaluation = new Evaluator(species).evaluate(sheet.bendTest());
      TestedRun tested = new TestedRun(run, sheet, evaluation);
      return EvaluationTable.of(sheet, evaluation, tested.ofBench());
    } catch (BadDocumentException e) {
      throw new WorkshopException("run " + run.id() + ": " + e.getMessage());
    }
  }

  /** Opened before the run is entered: where there is no bench head, there is no run. */
  private record OpenLine(ByteLine line) implements LineOpener {
    @Override
    public String description() {
      return line.description();
    }

    @Override
    public ByteLine open() {
      return line;
    }
  }

  /** Says each instruction once, on standard error, so that standard output holds the answer. */
  private static final class Instructions implements Consumer<BenchSnapshot> {
    private final Console console;
    private final boolean quiet;
    private String last = "";

    Instructions(Console console, boolean quiet) {
      this.console = console;
      this.quiet = quiet;
    }

    @Override
    public void accept(BenchSnapshot snapshot) {
      String now =
          snapshot.test() == null
              ? snapshot.linkInWords()
              : snapshot.test().instruction().inWords();
      if (!quiet && !now.equals(last)) {
        console.err().println(now);
        last = now;
      }
    }
  }
}
