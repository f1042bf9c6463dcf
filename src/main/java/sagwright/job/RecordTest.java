package sagwright.job;

import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import sagwright.bench.HeadSession;
import sagwright.bench.TestPlan;
import sagwright.sheet.CalibrationWriter;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Run;
import sagwright.workshop.RunJournal;
import sagwright.workshop.RunStart;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * One whole test from a bench head: enter the run, keep every line as it comes, and when the test
 * has ended work it out and close it. The same for the window and for the command line.
 */
public final class RecordTest {
  private final Workshop workshop;
  private final SafeLoad safeLoad;
  private final CloseRun closeRun;
  private final InstantSource clock;
  private final Executor work;

  /**
   * @param work where runs are worked out and stored: never the head-reader's own thread
   */
  public RecordTest(
      Workshop workshop,
      SpeciesTable species,
      SafeLoad safeLoad,
      InstantSource clock,
      Executor work) {
    this.workshop = workshop;
    this.safeLoad = safeLoad;
    this.closeRun = new CloseRun(workshop, species);
    this.clock = clock;
    this.work = work;
  }

  /**
   * Begins a test on an open session. The run is on the record before this returns; disk is waited
   * for, so it is called on the work thread.
   *
   * @param most after so long the test ends
   * @return the test as it stands on the record, once it has ended; where the head's line cannot be
   *     opened it fails, and the run stays with no reading and says so
   */
  public CompletableFuture<Run> begin(HeadSession session, TestSetting setting, Duration most)
      throws WorkshopException {
    RunStart start =
        new RunStart(
            setting.blank(),
            clock.instant(),
            setting.before().json(),
            CalibrationWriter.write(setting.calibration()),
            safeLoad.limits(setting.before(), setting.calibration()),
            setting.order());
    TestPlan plan = new TestPlan(setting.calibration(), start.limits());
    RunJournal journal = workshop.runs().start(start);
    return session
        .begin(plan, journal, most)
        .whenComplete(
            (recorded, failure) -> {
              if (failure != null) {
                journal.close(); // nothing came: it is found and closed with the runs cut off
              }
            })
        .thenApplyAsync(
            recorded -> {
              try {
                return closeRun.close(start, journal, recorded);
              } catch (WorkshopException e) {
                throw new CompletionException(notClosed(journal.runId(), e));
              }
            },
            work);
  }

  /** The journal has what came: it outlives a close that failed. */
  private static WorkshopException notClosed(long runId, WorkshopException why) {
    return new WorkshopException(
        "run "
            + runId
            + " is not closed yet: "
            + why.getMessage()
            + ". Its readings are kept: salvage them once that is mended");
  }
}
