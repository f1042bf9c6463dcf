package sagwright.screen.bench;

import java.util.List;
import sagwright.beam.SetUp;
import sagwright.screen.Reply;

/**
 * What the maker can ask for at the bench. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link BenchView}.
 */
public interface BenchActions {
  /** Lays a blank on the bench by its tag; the view says why, too, where that cannot be. */
  void lay(String tag, Reply reply);

  /** Tries the blank for an order by its number; an empty text for none. */
  void tryFor(String order);

  /** Space or the control: begins a test, or ends the one that runs in the ordinary way. */
  void test();

  /** Esc: breaks the test off; what was read is kept, set aside. */
  void breakOff();

  /** Takes the last action back that can be taken back: a run moved, a grade, a promise. */
  void undo();

  /** The shaft now lies turned by so many degrees. */
  void turnTo(double degrees);

  /** A run that was read by hand. */
  void keepHandRead(HandRead read, Reply reply);

  /**
   * What the hand says of the blank that lies there.
   *
   * @param typed N/mm, or a word of the shop's scale
   * @param initials whose hand
   */
  void guess(String typed, String initials, Reply reply);

  /** A series has so many runs from now on. */
  void makeSeriesOf(int runs);

  /** Someone looks behind the ±: the second opinion is wanted. */
  void lookBehind();

  /** The bench is set up otherwise for the blank that lies there; null for as usual. */
  void setUp(SetUp setUp);

  /** The blank was rolled past the gauge with no load on it. */
  void keepBow(List<Rolled> rolled, Reply reply);

  /** Answers the question that the view asks. */
  void answer(Choice choice);

  /**
   * Settled pairs, from any zero.
   *
   * @param massesHung whether the loads were hung as masses
   * @param hung masses in g, or loads in N
   * @param dialMm one deflection for each, the way the load pushes
   */
  record HandRead(boolean massesHung, List<Double> hung, List<Double> dialMm) {
    public HandRead {
      hung = List.copyOf(hung);
      dialMm = List.copyOf(dialMm);
    }
  }

  /** A gauge reading at a turn, no load on the shaft; from any zero. */
  record Rolled(double turnDegrees, double gaugeMm) {}

  /** An answer that a question offers; the view says which. */
  enum Choice {
    /** It is the right blank: the run stays. */
    KEEP,
    /** It is the other blank that the question names: the run goes there, with a trace. */
    MOVE_THERE,
    /** It is another blank: lay that one; the run goes with it, with a trace. */
    MOVE,
    /** The run no longer counts; it stays on the record. */
    SET_ASIDE,
    /** Leave it as it is for now. */
    LATER
  }
}
