package sagwright.screen.start;

import java.nio.file.Path;
import sagwright.screen.Reply;

/** What can be begun with. Called on the event thread; every call returns at once. */
public interface StartActions {
  /** Opens a workshop, or makes it where it is not there yet. */
  void openWorkshop(Path file, Reply reply);

  /** Opens the practice bench, with a workshop of its own. */
  void practise(Reply reply);
}
