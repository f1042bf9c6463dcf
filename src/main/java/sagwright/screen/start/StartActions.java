package sagwright.screen.start;

import java.nio.file.Path;
import java.util.function.Consumer;
import sagwright.screen.Reply;

/** What can be begun with. Called on the event thread; every call returns at once. */
public interface StartActions {
  /** Opens a workshop, or makes it where it is not there yet. */
  void openWorkshop(Path file, Reply reply);

  /** Opens the practice bench, with a workshop of its own. */
  void practise(Reply reply);

  /**
   * Opens the example workshop; it is made where it is not there yet, which takes some seconds.
   *
   * @param progress is told how far that is, on the thread that makes it
   */
  void openExample(Consumer<String> progress, Reply reply);
}
