package sagwright.screen.bench;

import sagwright.beam.SetUp;
import sagwright.job.BenchShop;
import sagwright.job.LaidBlank;
import sagwright.job.RunsTogether;
import sagwright.workshop.WorkshopException;

/** How the blank lies: at which turn, on which set-up, at which run of its series. */
final class BenchLay {
  private final BenchShop shop;
  private final BenchNow now;
  private double turnDegrees;
  private SetUp setUp; // null for the usual one
  private BenchSeries series = BenchSeries.of(1);

  BenchLay(BenchShop shop, BenchNow now) {
    this.shop = shop;
    this.now = now;
  }

  /** Lays a blank down as usual, at the start of a series. */
  void lay(String tag) throws WorkshopException {
    turnDegrees = 0;
    setUp = null;
    series = BenchSeries.of(shop.runsOfSeries());
    LaidBlank laid = laid(tag);
    now.forgetQuestion();
    now.guessing().laid(laid); // first: what it has shown may have to be hidden
    now.become(now.state().withLaid(laid, together(laid)));
  }

  /** Reads the blank's record anew, the shaft as it lies. */
  void again() throws WorkshopException {
    LaidBlank laid = laid(now.state().laid().blank().tag());
    now.become(now.state().withRecord(laid, together(laid)));
  }

  private LaidBlank laid(String tag) throws WorkshopException {
    SetUp here = setUp == null ? shop.usualSetUp() : setUp;
    return shop.lay(tag, here.turnedBy(turnDegrees));
  }

  private RunsTogether together(LaidBlank laid) {
    return shop.together(laid).orElse(null);
  }

  void turnTo(double degrees) throws WorkshopException {
    turnDegrees = degrees;
    again();
    if (now.state().phase() == Phase.TURN) {
      now.become(Phase.READY, "");
    }
  }

  /**
   * @param next null for the usual one
   */
  void setUp(SetUp next) throws WorkshopException {
    setUp = next;
    turnDegrees = 0;
    series = BenchSeries.of(series.runs());
    again();
    RunsTogether together = now.state().together();
    if (together != null) {
      now.become(now.state().withShown(together.newest()));
    }
    now.become(Phase.READY, next == null ? "" : "move supports and load, then Space");
  }

  void makeSeriesOf(int runs) throws WorkshopException {
    shop.setRunsOfSeries(runs);
    series = BenchSeries.of(runs);
    now.become(now.state().phase(), runs == 1 ? "single runs from now on" : "series of " + runs);
  }

  /**
   * One run of the series is done: says how to turn the shaft for the next, if one is to follow.
   */
  void oneMore() throws WorkshopException {
    series = series.oneMore();
    if (!series.goesOn()) {
      series = BenchSeries.of(series.runs());
      return;
    }
    turnDegrees = (turnDegrees + series.stepDegrees()) % 360;
    again();
    now.become(
        Phase.TURN,
        (series.done() + 1)
            + " of "
            + series.runs()
            + ": mark "
            + ButtPicture.whereMarkIs(turnDegrees));
  }
}
