package sagwright.screen.bench;

import java.util.List;
import sagwright.screen.Reply;

/**
 * What the maker can ask for at the bench. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link BenchView}.
 */
public interface BenchActions {
  /** Lays a blank on the bench by its tag. */
  void lay(String tag);

  /** Tries the blank for an order by its number; an empty text for none. */
  void tryFor(String order);

  /** Space or the control: begins a test, or ends the one that runs in the ordinary way. */
  void test();

  /** Esc: breaks the test off; what was read is kept, set aside. */
  void breakOff();

  /** The shaft now lies turned by so many degrees. */
  void turnTo(double degrees);

  /** A run that was read by hand: settled pairs. */
  void keepHandRead(List<HungPair> pairs, Reply reply);

  /** Answers the question that the view asks. */
  void answer(Choice choice);

  /**
   * A load that was hung and what the dial showed.
   *
   * @param loadN from any zero
   * @param dialMm deflection the way the load pushes, from any zero
   */
  record HungPair(double loadN, double dialMm) {}

  /** An answer that a question offers; the view says which. */
  enum Choice {
    /** It is the right blank: the run stays. */
    KEEP,
    /** It is another blank: lay that one; the run goes with it, with a trace. */
    MOVE,
    /** Leave it as it is for now. */
    LATER
  }
}
