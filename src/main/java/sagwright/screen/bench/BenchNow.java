package sagwright.screen.bench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import sagwright.bench.BenchSnapshot;
import sagwright.bench.HeadSession;
import sagwright.bench.HeadTiming;
import sagwright.job.BenchShop;
import sagwright.screen.Mailbox;
import sagwright.screen.ShopUnits;
import sagwright.screen.bench.BenchActions.Choice;
import sagwright.workshop.WorkshopException;

/**
 * What the bench is about now. Its state changes on the work thread alone, the head's snapshots
 * come on the head-reader thread; either puts the newest view into the mailbox.
 */
final class BenchNow {
  /** Views are made no more often than this, but at once where the state changes. */
  private static final long VIEW_EVERY_NANOS = 40_000_000;

  private final BenchShop shop;
  private final Executor work;
  private final Mailbox<BenchView> mailbox;
  private final BenchViews views;
  private final Guessing guessing;
  private final HeadSession session;
  private volatile ShopUnits units = ShopUnits.METRIC;
  private volatile BenchState state = BenchState.EMPTY;
  private long lastViewNanos; // of the head-reader thread
  private Map<Choice, Job> answers = Map.of(); // of the work thread

  /** Work that may be refused. */
  interface Job {
    void run() throws WorkshopException;
  }

  /** What the maker may answer, and what is done then. */
  record Answer(Choice choice, String words, Job job) {
    /** Nothing is done. */
    static Answer later(String words) {
      return new Answer(Choice.LATER, words, () -> {});
    }
  }

  BenchNow(BenchShop shop, Executor work, Mailbox<BenchView> mailbox) {
    this.shop = shop;
    this.work = work;
    this.mailbox = mailbox;
    this.views = new BenchViews(shop);
    this.guessing = new Guessing(shop);
    this.session = HeadSession.lasting(shop.place().opener(), HeadTiming.ORDINARY, this::follow);
  }

  HeadSession session() {
    return session;
  }

  Guessing guessing() {
    return guessing;
  }

  BenchState state() {
    return state;
  }

  private void follow(BenchSnapshot snapshot) {
    shop.place().follow(snapshot);
    long now = System.nanoTime();
    if (now - lastViewNanos >= VIEW_EVERY_NANOS) {
      lastViewNanos = now;
      show(snapshot);
    }
  }

  private void show(BenchSnapshot snapshot) {
    BenchState shown;
    do {
      shown = state;
      mailbox.put(guessing.over(views.of(shown, snapshot, units)));
    } while (!shown.equals(state)); // what another thread has just shown must not stay covered
  }

  void become(BenchState next) {
    state = next;
    show(session.snapshot());
  }

  void speakIn(ShopUnits next) {
    units = next;
    show(session.snapshot());
  }

  /** The same but for where it stands. */
  void become(Phase phase, String detail) {
    become(state.withPhase(phase, detail));
  }

  /** Does a job on the work thread; the screen says why one was refused. */
  void atWork(Job job) {
    work.execute(
        () -> {
          try {
            job.run();
          } catch (WorkshopException e) {
            become(Phase.NO_ANSWER, e.getMessage());
          } catch (RuntimeException e) {
            System.getLogger(BenchDesk.class.getName())
                .log(System.Logger.Level.ERROR, "at the bench", e);
            become(Phase.NO_ANSWER, "the program stumbled: see its log");
          }
        });
  }

  /**
   * Asks the maker, and does what belongs to the answer; an answer that is not named does nothing.
   */
  void ask(BenchView.Question question, Map<Choice, Job> next) {
    answers = next;
    become(state.asking(question));
  }

  void ask(String words, Answer... mayAnswer) {
    Map<Choice, Job> next = new EnumMap<>(Choice.class);
    List<BenchView.Offer> offers = new ArrayList<>();
    for (Answer answer : mayAnswer) {
      next.put(answer.choice(), answer.job());
      offers.add(new BenchView.Offer(answer.choice(), answer.words()));
    }
    ask(new BenchView.Question(words, offers), next);
  }

  /** No answer to an older question counts any more. */
  void forgetQuestion() {
    answers = Map.of();
  }

  void answer(Choice choice) throws WorkshopException {
    Job job = answers.getOrDefault(choice, () -> {});
    forgetQuestion();
    become(state.asking(null));
    job.run();
  }
}
