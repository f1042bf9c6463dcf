package sagwright.job;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sagwright.bench.BenchWarning;
import sagwright.bench.Ending;
import sagwright.bench.LoadLimits;
import sagwright.bench.RecordedRun;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Run;
import sagwright.workshop.RunClosing;
import sagwright.workshop.RunJournal;
import sagwright.workshop.RunOutcome;
import sagwright.workshop.RunStart;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Makes a recorded run whole: its sheet, its answer where it allows one, its place on the record.
 */
public final class CloseRun {
  private final Workshop workshop;
  private final SheetReader reader;
  private final EvaluateRun evaluate;

  public CloseRun(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
    this.evaluate = new EvaluateRun(species);
  }

  /** That a run did not end as runs should, which its answer must not hide. */
  record EndedEarly(Ending ending) implements Warning {
    @Override
    public String inWords() {
      return ending.inWords();
    }
  }

  /**
   * That a run stayed far under the load that was asked for. Its line may lie in the seating toe
   * altogether, straight and yet too soft, and nothing in its readings tells so.
   */
  record ShortOfLoad(double greatestN, double targetN) implements Warning {
    /** The load was nearly all on: common practice, no source. */
    private static final double LEAST_SHARE_OF_TARGET = 0.5;

    static boolean isSo(double greatestN, LoadLimits limits) {
      return greatestN < LEAST_SHARE_OF_TARGET * limits.targetN();
    }

    @Override
    public String inWords() {
      return String.format(
          Locale.ROOT,
          "the load went only to %.1f N of the %.1f N asked: the shaft may still have been seating:"
              + " test again",
          greatestN,
          targetN);
    }
  }

  /**
   * @param start as it was entered
   * @param journal that its bytes went to
   * @param recorded what the bench made of them
   */
  public Run close(RunStart start, RunJournal journal, RecordedRun recorded)
      throws WorkshopException {
    Sheet sheet = before(start).withRun(recorded.samples(), start.startedAt().toString());
    RunClosing closing =
        new RunClosing(
            recorded.ending().inWords(),
            sheet.json(),
            recorded.line(),
            outcome(sheet, start, recorded),
            recorded.ending() == Ending.BROKEN_OFF ? "broken off" : null);
    return workshop.runs().close(journal, closing);
  }

  private RunOutcome outcome(Sheet sheet, RunStart start, RecordedRun recorded)
      throws WorkshopException {
    List<BenchWarning> ofBench =
        Arrays.stream(BenchWarning.values()).filter(recorded.warnings()::contains).toList();
    if (!recorded.allowsAnswer()) {
      return RunOutcome.without(
          WhyNoAnswer.inWords(recorded.ending().inWords(), recorded, ofBench));
    }
    List<Warning> warnings = new ArrayList<>(ofBench);
    if (recorded.ending() != Ending.LOAD_OFF && recorded.ending() != Ending.ENDED_BY_HAND) {
      warnings.add(new EndedEarly(recorded.ending()));
    }
    if (ShortOfLoad.isSo(recorded.greatestLoadN(), start.limits())) {
      warnings.add(new ShortOfLoad(recorded.greatestLoadN(), start.limits().targetN()));
    }
    TestWarning.ofCalibration(start.calibration(), start.startedAt()).ifPresent(warnings::add);
    RunOutcome outcome = evaluate.of(sheet, warnings);
    return outcome.answer() != null
        ? outcome
        : RunOutcome.without(WhyNoAnswer.inWords(outcome.noAnswer(), recorded, ofBench));
  }

  private Sheet before(RunStart start) throws WorkshopException {
    try {
      return reader.read(start.document());
    } catch (BadDocumentException e) {
      throw new WorkshopException("the record of " + start.blank().tag() + ": " + e.getMessage());
    }
  }
}
