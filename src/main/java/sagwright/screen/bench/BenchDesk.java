package sagwright.screen.bench;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import sagwright.beam.SetUp;
import sagwright.bench.Calibration;
import sagwright.bench.Ending;
import sagwright.bench.HeadSession;
import sagwright.job.BenchShop;
import sagwright.job.LaidBlank;
import sagwright.job.TestedRun;
import sagwright.screen.ComplaintException;
import sagwright.screen.Mailbox;
import sagwright.screen.Reply;
import sagwright.screen.ShopUnits;
import sagwright.survey.Bow;
import sagwright.workshop.Run;
import sagwright.workshop.WorkshopException;

/**
 * What stands behind the bench screen: every action of the maker goes to the work thread. What the
 * bench is about is in {@link BenchNow}, how the blank lies in {@link BenchLay}, what follows on a
 * run in {@link AfterRun}.
 */
public final class BenchDesk implements BenchActions, AutoCloseable {
  private final BenchShop shop;
  private final Executor work;
  private final BenchNow now;
  private final BenchLay lay;
  private final AfterRun afterRun;

  /**
   * @param work one thread, the workshop's one writer
   */
  public BenchDesk(BenchShop shop, Executor work, Mailbox<BenchView> mailbox) {
    this.shop = shop;
    this.work = work;
    this.now = new BenchNow(shop, work, mailbox);
    this.lay = new BenchLay(shop, now);
    this.afterRun = new AfterRun(shop, now, lay);
    now.atWork(this::sayWhereToBegin);
    now.atWork(afterRun::offerWhatWasCutOff);
  }

  private void sayWhereToBegin() throws WorkshopException {
    if (!shop.hasBlanks()) {
      now.become(Phase.NO_BLANK, "no blank yet: F2, then Ctrl N, writes the first one down");
    }
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
        BenchViews.SAFETY_OF_ALL_SHAFTS,
        "",
        null,
        List.of(),
        null);
  }

  /** The session that the bench's head is heard by; it ends with this desk. */
  public HeadSession session() {
    return now.session();
  }

  /** The shop reads masses so from now on. */
  public void speakIn(ShopUnits units) {
    now.speakIn(units);
  }

  /** Does a job on the work thread, unless a test runs. */
  private void betweenTests(BenchNow.Job job) {
    now.atWork(
        () -> {
          if (!now.state().isTesting()) {
            job.run();
          }
        });
  }

  /** Lays a blank on the bench, asked for on another page. */
  public void lay(String tag) {
    betweenTests(() -> layNow(tag));
  }

  /** The tag of the blank there that the hand is to guess first; empty for none. Any thread. */
  public String toBeGuessed() {
    LaidBlank laid = now.state().laid();
    return laid != null && now.guessing().isAwaited() ? laid.blank().tag() : "";
  }

  @Override
  public void lay(String tag, Reply reply) {
    now.atWork(
        () -> {
          try {
            if (now.state().isTesting()) {
              reply.refused("a test runs");
              return;
            }
            layNow(tag);
            reply.done();
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
            throw e; // the view says it
          }
        });
  }

  private void layNow(String tag) throws WorkshopException {
    if (!shop.hasBlank(tag)) {
      throw new WorkshopException(
          "there is no blank " + tag + ": F2 shows all, Ctrl N there writes one down");
    }
    lay.lay(tag);
    afterRun.laid();
  }

  @Override
  public void tryFor(String order) {
    now.atWork(
        () -> {
          now.become(now.state().withTried(order.isBlank() ? null : shop.order(order.trim())));
          afterRun.forecast();
        });
  }

  @Override
  public void test() {
    now.atWork(
        () -> {
          BenchState state = now.state();
          if (state.isTesting()) {
            now.session().end(Ending.ENDED_BY_HAND);
            return;
          }
          Calibration calibration = shop.place().calibration();
          if (state.laid() == null || calibration == null || now.guessing().isAwaited()) {
            return;
          }
          LaidBlank laid = state.laid();
          now.become(state.testing());
          shop.recordTest()
              .begin(
                  now.session(),
                  laid.setting(calibration, state.tried() == null ? null : state.tried().stored()),
                  BenchShop.LONGEST_TEST)
              .whenComplete((run, failure) -> now.atWork(() -> ended(run, failure)));
        });
  }

  private void ended(Run run, Throwable failure) throws WorkshopException {
    if (failure == null) {
      afterRun.ended(run);
    } else {
      Throwable why = failure.getCause() == null ? failure : failure.getCause();
      now.become(Phase.NO_ANSWER, why.getMessage());
    }
  }

  @Override
  public void answer(Choice choice) {
    now.atWork(() -> now.answer(choice));
  }

  @Override
  public void guess(String typed, String initials, Reply reply) {
    work.execute(
        () -> {
          try {
            BenchState state = now.state();
            if (now.guessing().isAwaited()) {
              now.guessing().guess(typed, initials, state.laid(), state.tried());
              now.become(state);
            }
            reply.done();
          } catch (ComplaintException | WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }

  @Override
  public void breakOff() {
    now.session().end(Ending.BROKEN_OFF);
  }

  @Override
  public void undo() {
    betweenTests(
        () -> {
          String what = shop.undoLast();
          if (now.state().laid() != null) {
            lay.again();
          }
          now.become(now.state().phase(), "taken back: " + what);
        });
  }

  @Override
  public void turnTo(double degrees) {
    betweenTests(
        () -> {
          if (now.state().laid() != null) {
            lay.turnTo(degrees);
          }
        });
  }

  @Override
  public void makeSeriesOf(int runs) {
    betweenTests(
        () -> {
          if (runs >= 1 && runs <= BenchSeries.MOST_RUNS) {
            lay.makeSeriesOf(runs);
          }
        });
  }

  @Override
  public void lookBehind() {
    betweenTests(
        () -> {
          BenchState state = now.state();
          if (state.shown() != null && state.opinion() == null) {
            now.become(state.withOpinion(shop.secondOpinion(state.shown())));
          }
        });
  }

  @Override
  public void setUp(SetUp next) {
    betweenTests(
        () -> {
          if (now.state().laid() != null) {
            lay.setUp(next);
            afterRun.forecast();
          }
        });
  }

  @Override
  public void keepBow(List<Rolled> rolled, Reply reply) {
    work.execute(
        () -> {
          try {
            Bow bow =
                shop.keepBow(
                    now.state().laid(),
                    rolled.stream().mapToDouble(Rolled::turnDegrees).toArray(),
                    rolled.stream().mapToDouble(Rolled::gaugeMm).toArray());
            lay.again();
            now.become(now.state().phase(), inWords(bow));
            afterRun.forecast();
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
            LaidBlank before = now.state().laid();
            Run run = shop.keepHandRead(before, HungMass.pairs(read));
            lay.again();
            if (run.outcome().answer() == null) {
              reply.refused("kept without an answer: " + run.outcome().noAnswer());
              return;
            }
            TestedRun tested = shop.tested(run);
            now.guessing().answered(tested);
            now.become(now.state().withShown(tested));
            reply.done();
            afterRun.goOnOrAsk(tested, before);
          } catch (WorkshopException e) {
            reply.refused(e.getMessage());
          }
        });
  }

  @Override
  public void close() {
    now.session().close();
  }
}
