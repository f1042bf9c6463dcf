package sagwright.screen.bench;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import sagwright.job.RunsTogether;
import sagwright.job.SalvageRuns;
import sagwright.job.TestedRun;
import sagwright.job.TriedOrder;
import sagwright.run.PoorRunException;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.survey.Bow;
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
  private double turnDegrees; // of the work thread, as all that follow
  private SetUp setUp; // null for the usual one
  private BenchSeries series = BenchSeries.of(1);
  private Run toBeMoved;
  private Map<Choice, Job> answers = Map.of();
  private final Set<Long> leftIn = new HashSet<>();

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
      ask(
          new BenchView.Question(
              (count == 1 ? "A run was" : count + " runs were")
                  + " cut off when the program last ended. Close with what was read?",
              List.of(
                  new BenchView.Offer(Choice.KEEP, "yes, keep what was read"),
                  new BenchView.Offer(Choice.LATER, "leave it for now"))),
          Map.of(Choice.KEEP, this::salvage));
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

  /** The session that the bench's head is heard by; it ends with this desk. */
  public HeadSession session() {
    return session;
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

  private void ask(BenchView.Question question, Map<Choice, Job> next) {
    answers = next;
    become(state.asking(question));
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
          setUp = null;
          series = BenchSeries.of(shop.runsOfSeries());
          LaidBlank laid = laid(tag);
          boolean moves = toBeMoved != null;
          if (moves) {
            shop.move(toBeMoved, laid.blank());
            toBeMoved = null;
            laid = laid(tag);
          }
          answers = Map.of();
          become(state.withLaid(laid, together(laid)));
          forecast();
          if (moves) {
            become(state.withPhase(Phase.READY, "the run was moved here; Ctrl Z takes it back"));
          }
        });
  }

  private LaidBlank laid(String tag) throws WorkshopException {
    SetUp here = setUp == null ? shop.usualSetUp() : setUp;
    return shop.lay(tag, here.turnedBy(turnDegrees));
  }

  private RunsTogether together(LaidBlank laid) {
    return shop.together(laid).orElse(null);
  }

  /** Reads the blank's record anew, the shaft as it lies. */
  private void layAgain() throws WorkshopException {
    LaidBlank laid = laid(state.laid().blank().tag());
    become(state.withRecord(laid, together(laid)));
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

  private void forecast() {
    if (state.tried() != null && state.together() != null) {
      become(
          state.withGraded(shop.forecast(state.together(), state.laid(), state.tried().order())));
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
    layAgain();
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
        ask(
            question(difference.get()),
            Map.of(
                Choice.KEEP, this::goOn,
                Choice.MOVE, () -> moveAway(tested),
                Choice.LATER, this::forecast));
      } else {
        goOn();
      }
    }
  }

  private void moveAway(TestedRun tested) {
    toBeMoved = tested.run();
    become(
        BenchState.EMPTY
            .withTried(state.tried())
            .withPhase(Phase.NO_BLANK, "type the tag of the blank that lies there"));
  }

  /** A run was kept: it is graded with its likes, and the series goes on. */
  private void goOn() throws WorkshopException {
    series = series.oneMore();
    grade();
    if (series.goesOn()) {
      turnDegrees = (turnDegrees + series.stepDegrees()) % 360;
      layAgain();
      become(
          state.withPhase(
              Phase.TURN,
              (series.done() + 1)
                  + " of "
                  + series.runs()
                  + ": mark "
                  + ButtPicture.whereMarkIs(turnDegrees)));
    } else {
      series = BenchSeries.of(series.runs());
    }
    askOfRunStandingOut();
  }

  private void askOfRunStandingOut() {
    for (TestedRun run : state.together().standingOut()) {
      if (!leftIn.contains(run.run().id())) {
        int number = state.together().runs().indexOf(run) + 1;
        ask(
            new BenchView.Question(
                "Run " + number + " stands out from the others. Set it aside?",
                List.of(
                    new BenchView.Offer(Choice.SET_ASIDE, "set it aside; it stays on the record"),
                    new BenchView.Offer(Choice.LATER, "leave it in"))),
            Map.of(
                Choice.SET_ASIDE, () -> setAside(run, number),
                Choice.LATER, () -> leftIn.add(run.run().id())));
        return;
      }
    }
  }

  private void setAside(TestedRun run, int number) throws WorkshopException {
    shop.setAside(run.run(), state.together().whyItStandsOut(run));
    countAnew();
    ask(
        new BenchView.Question(
            "Run " + number + " does not count now.",
            List.of(
                new BenchView.Offer(Choice.KEEP, "let it count again"),
                new BenchView.Offer(Choice.LATER, "leave it aside"))),
        Map.of(
            Choice.KEEP,
            () -> {
              shop.countAgain(run.run());
              leftIn.add(run.run().id());
              countAnew();
            }));
  }

  /** Which runs count has changed. */
  private void countAnew() throws WorkshopException {
    Phase phase = state.phase();
    String detail = state.detail();
    layAgain();
    become(state.withShown(state.together().newest()).withPhase(phase, detail));
    grade();
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
      become(state.withGraded(shop.grade(state.laid().blank(), state.tried().stored()).graded()));
    } catch (PoorRunException e) {
      become(state.withPhase(state.phase(), e.getMessage()));
    }
  }

  @Override
  public void answer(Choice choice) {
    atWork(
        () -> {
          Job job = answers.getOrDefault(choice, () -> {});
          answers = Map.of();
          become(state.asking(null));
          job.run();
        });
  }

  @Override
  public void breakOff() {
    session.end(Ending.BROKEN_OFF);
  }

  @Override
  public void undo() {
    atWork(
        () -> {
          if (!state.isTesting()) {
            String what = shop.undoLast();
            if (state.laid() != null) {
              layAgain();
            }
            become(state.withPhase(state.phase(), "taken back: " + what));
          }
        });
  }

  @Override
  public void turnTo(double degrees) {
    atWork(
        () -> {
          if (!state.isTesting() && state.laid() != null) {
            turnDegrees = degrees;
            layAgain();
            if (state.phase() == Phase.TURN) {
              become(state.withPhase(Phase.READY, ""));
            }
          }
        });
  }

  @Override
  public void makeSeriesOf(int runs) {
    atWork(
        () -> {
          if (!state.isTesting() && runs >= 1 && runs <= BenchSeries.MOST_RUNS) {
            shop.setRunsOfSeries(runs);
            series = BenchSeries.of(runs);
            String words = runs == 1 ? "single runs from now on" : "series of " + runs;
            become(state.withPhase(state.phase(), words));
          }
        });
  }

  @Override
  public void lookBehind() {
    atWork(
        () -> {
          if (!state.isTesting() && state.shown() != null && state.opinion() == null) {
            become(state.withOpinion(shop.secondOpinion(state.shown())));
          }
        });
  }

  @Override
  public void setUp(SetUp next) {
    atWork(
        () -> {
          if (state.isTesting() || state.laid() == null) {
            return;
          }
          setUp = next;
          turnDegrees = 0;
          series = BenchSeries.of(series.runs());
          layAgain();
          become(
              state.withPhase(
                  Phase.READY, next == null ? "" : "move supports and load, then Space"));
        });
  }

  @Override
  public void keepBow(List<Rolled> rolled, Reply reply) {
    work.execute(
        () -> {
          try {
            Bow bow =
                shop.keepBow(
                    state.laid(),
                    rolled.stream().mapToDouble(Rolled::turnDegrees).toArray(),
                    rolled.stream().mapToDouble(Rolled::gaugeMm).toArray());
            layAgain();
            become(state.withPhase(state.phase(), inWords(bow)));
            forecast();
            reply.done();
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }

  private static String inWords(Bow bow) {
    return bow.isSeen()
        ? String.format(Locale.ROOT, "bow %.2f mm, belly at %.0f°", bow.sizeMm(), bow.sideDegrees())
        : String.format(Locale.ROOT, "straight within %.2f mm", bow.sizeMm());
  }

  @Override
  public void keepHandRead(HandRead read, Reply reply) {
    work.execute(
        () -> {
          try {
            Run run = shop.keepHandRead(state.laid(), HungMass.pairs(read));
            layAgain();
            if (run.outcome().answer() == null) {
              reply.refused("kept without an answer: " + run.outcome().noAnswer());
              return;
            }
            become(state.withShown(shop.tested(run)));
            reply.done();
            goOn();
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
