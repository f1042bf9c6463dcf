package sagwright.screen.rack;

import sagwright.job.KeepSplice;
import sagwright.screen.Reply;

/**
 * What the maker can ask for at the rack. Called on the event thread; every call returns at once,
 * what comes of it is seen in the next {@link RackView}.
 */
public interface RackActions {
  /** Shows the record of a blank: the next view has it. */
  void open(String tag);

  /** Enters a new blank. */
  void enter(BlankEntry blank, Reply reply);

  /** Enters newer measurements of a blank; the older ones stay on its record. */
  void measure(BlankEntry blank, Reply reply);

  /** Says that a blank is spliced already, as a visitor's cue is. */
  void splice(String tag, KeepSplice.Measured splice, Reply reply);

  /** Writes a note on a blank's record. */
  void note(String tag, String words, Reply reply);

  /** A blank is no more: sold, broken, firewood. Its record stays. */
  void end(String tag, String why, Reply reply);

  /** Takes the workshop's last action back, whichever page it was done on. */
  void undo(Reply reply);

  /** Lays the blank on the bench and opens that page. */
  void lay(String tag);
}
