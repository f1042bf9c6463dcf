package sagwright.screen.bench;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sagwright.bench.Ending;
import sagwright.grade.GradedForecast;
import sagwright.job.BenchShop;
import sagwright.job.LaidBlank;
import sagwright.job.RightBlank;
import sagwright.job.SalvageRuns;
import sagwright.job.TestedRun;
import sagwright.run.PoorRunException;
import sagwright.screen.bench.BenchActions.Choice;
import sagwright.workshop.Blank;
import sagwright.workshop.Run;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/**
 * What comes after a run: its answer, what the maker is asked about it, its grade, and the next one
 * of its series. For the work thread.
 */
final class AfterRun {
  private final BenchShop shop;
  private final BenchNow now;
  private final BenchLay lay;
  private final Set<Long> leftIn = new HashSet<>();
  private TestedRun toBeMoved; // null for none

  AfterRun(BenchShop shop, BenchNow now, BenchLay lay) {
    this.shop = shop;
    this.now = now;
    this.lay = lay;
  }

  /** Runs of an earlier day may have had no end. */
  void offerWhatWasCutOff() throws WorkshopException {
    int count = shop.cutOffRuns();
    if (count > 0) {
      now.ask(
          (count == 1 ? "A run was" : count + " runs were")
              + " cut off when the program last ended. Close with what was read?",
          new BenchNow.Answer(Choice.KEEP, "yes, keep what was read", this::salvage),
          BenchNow.Answer.later("leave it for now"));
    }
  }

  private void salvage() throws WorkshopException {
    StringBuilder words = new StringBuilder();
    for (SalvageRuns.Salvaged run : shop.salvage()) {
      words.append(words.length() == 0 ? "kept on " : ", ").append(run.tag());
    }
    now.become(now.state().phase(), words.toString());
  }

  void ended(Run run) throws WorkshopException {
    LaidBlank before = now.state().laid();
    lay.again();
    if (run.isSetAside()) {
      now.become(Phase.BROKEN_OFF, "");
    } else if (run.outcome().answer() == null) {
      boolean lost = run.ending().equals(Ending.LINE_LOST.inWords());
      now.become(lost ? Phase.LINE_LOST : Phase.NO_ANSWER, lost ? "" : run.outcome().noAnswer());
    } else {
      TestedRun tested = shop.tested(run);
      now.guessing().answered(tested);
      now.become(now.state().withShown(tested));
      goOnOrAsk(tested, before);
    }
  }

  /** The next step after a run, unless another blank may lie there. */
  void goOnOrAsk(TestedRun tested, LaidBlank before) throws WorkshopException {
    Optional<RightBlank.Doubt> doubt = shop.doubt(tested, before);
    if (doubt.isEmpty()) {
      goOn();
      return;
    }
    Map<Choice, BenchNow.Job> answers = new EnumMap<>(Choice.class);
    answers.put(Choice.KEEP, this::goOn);
    answers.put(Choice.MOVE, () -> moveAway(tested));
    answers.put(Choice.LATER, this::forecast);
    RightBlank.Better better = doubt.get().better();
    if (better != null) {
      answers.put(Choice.MOVE_THERE, () -> moveTo(tested, better.blank()));
    }
    now.ask(DoubtWords.question(doubt.get()), answers);
  }

  private void moveAway(TestedRun tested) {
    toBeMoved = tested;
    now.become(
        BenchState.EMPTY
            .withTried(now.state().tried())
            .withPhase(Phase.NO_BLANK, "type the tag of the blank that lies there"));
  }

  private void moveTo(TestedRun tested, Blank there) throws WorkshopException {
    lay.lay(there.tag());
    toBeMoved = tested;
    laid();
  }

  /** A blank was laid: a run that was taken off the wrong one goes to it. */
  void laid() throws WorkshopException {
    if (toBeMoved == null) {
      forecast();
      return;
    }
    shop.move(toBeMoved, now.state().laid().blank());
    toBeMoved = null;
    lay.lay(now.state().laid().blank().tag());
    now.guessing().none(); // its run has been seen already
    forecast();
    now.become(Phase.READY, "the run was moved here; Ctrl Z takes it back");
  }

  /** A run was kept: it is graded with its likes, and the series goes on. */
  private void goOn() throws WorkshopException {
    grade();
    lay.oneMore();
    askOfRunStandingOut();
  }

  private void askOfRunStandingOut() {
    for (TestedRun run : now.state().together().standingOut()) {
      if (!leftIn.contains(run.run().id())) {
        int number = now.state().together().runs().indexOf(run) + 1;
        now.ask(
            "Run " + number + " stands out from the others. Set it aside?",
            new BenchNow.Answer(
                Choice.SET_ASIDE,
                "set it aside; it stays on the record",
                () -> setAside(run, number)),
            new BenchNow.Answer(Choice.LATER, "leave it in", () -> leftIn.add(run.run().id())));
        return;
      }
    }
  }

  private void setAside(TestedRun run, int number) throws WorkshopException {
    shop.setAside(run.run(), now.state().together().whyItStandsOut(run));
    countAnew();
    now.ask(
        "Run " + number + " does not count now.",
        new BenchNow.Answer(Choice.KEEP, "let it count again", () -> letCount(run)),
        BenchNow.Answer.later("leave it aside"));
  }

  private void letCount(TestedRun run) throws WorkshopException {
    shop.countAgain(run.run());
    leftIn.add(run.run().id());
    countAnew();
  }

  /** Which runs count has changed. */
  private void countAnew() throws WorkshopException {
    Phase phase = now.state().phase();
    String detail = now.state().detail();
    lay.again();
    now.become(now.state().withShown(now.state().together().newest()).withPhase(phase, detail));
    grade();
  }

  private void grade() throws WorkshopException {
    BenchState state = now.state();
    if (state.tried() == null) {
      shop.gradeAgain(state.laid().blank());
      return;
    }
    try {
      Blank blank = state.laid().blank();
      WorkshopOrder order = state.tried().stored();
      GradedForecast graded = shop.grade(blank, order).graded();
      now.become(
          state.withFinished(
              new FinishedCue(
                  shop.plan(state.together(), state.laid(), graded),
                  shop.lastChange(blank, order).orElse(null))));
    } catch (PoorRunException e) {
      now.become(state.phase(), e.getMessage());
    }
  }

  /** What the runs so far make for the order tried; nothing is kept. */
  void forecast() throws WorkshopException {
    BenchState state = now.state();
    if (state.tried() != null && state.together() != null) {
      GradedForecast graded = shop.forecast(state.together(), state.laid(), state.tried().order());
      now.become(
          state.withFinished(
              new FinishedCue(shop.plan(state.together(), state.laid(), graded), null)));
    }
  }
}
