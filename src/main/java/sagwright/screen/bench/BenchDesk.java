package sagwright.screen.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import sagwright.beam.SetUp;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.Calibration;
import sagwright.bench.Ending;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.job.BenchShop;
import sagwright.job.LaidBlank;
import sagwright.job.RightBlank;
import sagwright.job.SalvageRuns;
import sagwright.job.TestedRun;
import sagwright.job.TriedOrder;
import sagwright.run.PoorRunException;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.workshop.Run;
import sagwright.workshop.WorkshopException;

/**
 * What stands behind the bench screen: every action goes to the work thread, which alone changes
 * the state; the head's snapshots come on the head-reader thread. Either puts the newest view into
 * the mailbox.
 */
public final class BenchDesk implements BenchActions, AutoCloseable {

  /** Views are made no more often than this, but at once where the phase changes. */
  private static final long VIEW_EVERY_NANOS = 40_000_000;

  private final BenchShop shop;
  private final Executor work;
  private final Mailbox<BenchView> mailbox;
  private final BenchViews views;
  private final HeadSession session;
  private volatile BenchState state = BenchState.EMPTY;
  private long lastViewNanos; // of the head-reader thread
  private double turnDegrees; // of the work thread, as the next two
  private Run toBeMoved;
  private boolean offersSalvage;
  private TestedRun questioned;

  /**
   * @param work one thread, the workshop's one writer
   */
  public BenchDesk(BenchShop shop, Executor work, Mailbox<BenchView> mailbox) {
    this.shop = shop;
    this.work = work;
    this.mailbox = mailbox;
    this.views = new BenchViews(shop);
    this.session = HeadSession.lasting(shop.place().opener(), HeadTiming.ORDINARY, this::follow);
    atWork(this::offerWhatWasCutOff);
  }

  private void offerWhatWasCutOff() throws WorkshopException {
    int count = shop.cutOffRuns();
    if (count > 0) {
      offersSalvage = true;
      become(
          state.asking(
              new BenchView.Question(
                  (count == 1 ? "A run was" : count + " runs were")
                      + " cut off when the program last ended. Close with what was read?",
                  List.of(
                      new BenchView.Offer(Choice.KEEP, "yes, keep what was read"),
                      new BenchView.Offer(Choice.LATER, "leave it for now")))));
    }
  }

  private void salvage() throws WorkshopException {
    StringBuilder words = new StringBuilder();
    for (SalvageRuns.Salvaged run : shop.salvage()) {
      words.append(words.length() == 0 ? "kept on " : ", ").append(run.tag());
    }
    become(state.withPhase(state.phase(), words.toString()));
  }

  /** What the screen shows before anything was laid. */
  public static BenchView atFirst() {
    return new BenchView(
        null,
        null,
        Phase.NO_BLANK,
        "",
        BenchView.HeadReading.NONE,
        new BenchView.Curves(List.of(), null, Double.NaN, 8, 22),
        null,
        null,
        null,
        new BenchView.Turns(0, List.of(), ""),
        "A bent shaft can snap.  Stand aside of it.  Eye protection on.",
        "",
        null,
        List.of());
  }

  private void follow(BenchSnapshot snapshot) {
    shop.place().follow(snapshot);
    long now = System.nanoTime();
    if (now - lastViewNanos >= VIEW_EVERY_NANOS) {
      lastViewNanos = now;
      mailbox.put(views.of(state, snapshot));
    }
  }

  private void become(BenchState next) {
    state = next;
    mailbox.put(views.of(next, session.snapshot()));
  }

  private interface Job {
    void run() throws WorkshopException;
  }

  private void atWork(Job job) {
    work.execute(
        () -> {
          try {
            job.run();
          } catch (WorkshopException e) {
            become(state.withPhase(Phase.NO_ANSWER, e.getMessage()));
          } catch (RuntimeException e) {
            System.getLogger(BenchDesk.class.getName())
                .log(System.Logger.Level.ERROR, "at the bench", e);
            become(state.withPhase(Phase.NO_ANSWER, "the program stumbled: see its log"));
          }
        });
  }

  @Override
  public void lay(String tag) {
    atWork(
        () -> {
          if (state.isTesting()) {
            return;
          }
          turnDegrees = 0;
          LaidBlank laid = laid(tag);
          if (toBeMoved != null) {
            shop.move(toBeMoved, laid.blank());
            toBeMoved = null;
            laid = laid(tag);
          }
          become(state.withLaid(laid));
          forecast();
        });
  }

  private LaidBlank laid(String tag) throws WorkshopException {
    SetUp usual = shop.usualSetUp().turnedBy(turnDegrees);
    return shop.lay(tag, usual);
  }

  @Override
  public void tryFor(String order) {
    atWork(
        () -> {
          TriedOrder tried = order.isBlank() ? null : shop.order(order.trim());
          become(state.withTried(tried));
          forecast();
        });
  }

  private void forecast() throws WorkshopException {
    if (state.tried() == null || state.shown() == null) {
      return;
    }
    try {
      become(state.withGraded(shop.forecast(state.shown(), state.laid(), state.tried().order())));
    } catch (PoorRunException e) {
      become(state.withPhase(state.phase(), e.getMessage()));
    }
  }

  @Override
  public void test() {
    atWork(
        () -> {
          if (state.isTesting()) {
            session.end(Ending.ENDED_BY_HAND);
            return;
          }
          Calibration calibration = shop.place().calibration();
          if (state.laid() == null || calibration == null) {
            return;
          }
          LaidBlank laid = state.laid();
          become(state.testing());
          shop.recordTest()
              .begin(
                  session,
                  laid.setting(calibration, state.tried() == null ? null : state.tried().stored()),
                  BenchShop.LONGEST_TEST)
              .whenComplete((run, failure) -> atWork(() -> ended(run, failure)));
        });
  }

  private void ended(Run run, Throwable failure) throws WorkshopException {
    if (failure != null) {
      Throwable why = failure.getCause() == null ? failure : failure.getCause();
      become(state.withPhase(Phase.NO_ANSWER, why.getMessage()));
      return;
    }
    LaidBlank before = state.laid();
    LaidBlank laid = laid(before.blank().tag());
    become(state.withRecord(laid));
    if (run.isSetAside()) {
      become(state.withPhase(Phase.BROKEN_OFF, ""));
    } else if (run.outcome().answer() == null) {
      boolean lost = run.ending().equals(Ending.LINE_LOST.inWords());
      become(state.withPhase(lost ? Phase.LINE_LOST : Phase.NO_ANSWER, run.outcome().noAnswer()));
    } else {
      TestedRun tested = shop.tested(run);
      become(state.withShown(tested));
      Optional<RightBlank.Difference> difference = RightBlank.of(tested, before);
      if (difference.isPresent() && difference.get().isDoubtful()) {
        questioned = tested;
        become(state.asking(question(difference.get())));
      } else {
        grade();
      }
    }
  }

  private static BenchView.Question question(RightBlank.Difference difference) {
    return new BenchView.Question(
        String.format(
            Locale.ROOT,
            "Is this the right blank? It is %.0f %% %s than when it was last tested.",
            Math.abs(difference.percent()),
            difference.percent() < 0 ? "softer" : "stiffer"),
        List.of(
            new BenchView.Offer(Choice.KEEP, "yes, keep the run here"),
            new BenchView.Offer(Choice.MOVE, "no, it is another blank"),
            new BenchView.Offer(Choice.LATER, "leave it, ungraded")));
  }

  private void grade() throws WorkshopException {
    if (state.tried() == null) {
      return;
    }
    try {
      become(
          state.withGraded(
              shop.grade(state.laid().blank(), state.tried().stored()).answer().graded()));
    } catch (PoorRunException e) {
      become(state.withPhase(state.phase(), e.getMessage()));
    }
  }

  @Override
  public void answer(Choice choice) {
    atWork(
        () -> {
          if (offersSalvage) {
            offersSalvage = false;
            become(state.asking(null));
            if (choice == Choice.KEEP) {
              salvage();
            }
            return;
          }
          if (questioned == null) {
            return;
          }
          TestedRun run = questioned;
          questioned = null;
          become(state.asking(null));
          switch (choice) {
            case KEEP -> grade();
            case MOVE -> {
              toBeMoved = run.run();
              become(
                  BenchState.EMPTY
                      .withTried(state.tried())
                      .withPhase(Phase.NO_BLANK, "type the tag of the blank that lies there"));
            }
            case LATER -> forecast();
          }
        });
  }

  @Override
  public void breakOff() {
    session.end(Ending.BROKEN_OFF);
  }

  @Override
  public void turnTo(double degrees) {
    atWork(
        () -> {
          if (!state.isTesting() && state.laid() != null) {
            turnDegrees = degrees;
            become(state.withRecord(laid(state.laid().blank().tag())));
          }
        });
  }

  @Override
  public void keepHandRead(HandRead read, Reply reply) {
    work.execute(
        () -> {
          try {
            LaidBlank laid = state.laid();
            Run run = shop.keepHandRead(laid, HungMass.pairs(read));
            become(state.withRecord(laid(laid.blank().tag())));
            if (run.outcome().answer() == null) {
              reply.refused("kept without an answer: " + run.outcome().noAnswer());
              return;
            }
            become(state.withShown(shop.tested(run)));
            reply.done();
            grade();
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }

  @Override
  public void close() {
    session.close();
  }
}
