package sagwright.job;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * What was set since the workshop was opened, to be taken back one after the other. Not for two
 * threads at a time.
 */
public final class ChangedSettings {
  private final Settings settings;
  private final Deque<Change> changes = new ArrayDeque<>();

  public ChangedSettings(Workshop workshop) {
    this.settings = workshop.settings();
  }

  /** Sets something, or lets it be felt. */
  public interface Step {
    /**
     * @throws WorkshopException where the workshop refuses
     */
    void run() throws WorkshopException;
  }

  /** Each setting as it was, null for one that was never set. */
  private record Change(String what, Map<String, String> before, Step then) {}

  /**
   * Sets something.
   *
   * @param what as people call it
   * @param names of the settings that may change by it
   * @param set sets them
   * @param then what is to be done once they have been taken back
   */
  public void set(String what, List<String> names, Step set, Step then) throws WorkshopException {
    Map<String, String> before = read(names);
    set.run();
    if (!before.equals(read(names))) {
      changes.push(new Change(what, before, then));
    }
  }

  private Map<String, String> read(List<String> names) throws WorkshopException {
    Map<String, String> read = new LinkedHashMap<>();
    for (String name : names) {
      read.put(name, settings.get(name).orElse(null));
    }
    return read;
  }

  /**
   * Sets what was set last to what it was before.
   *
   * @return what that was; empty where nothing is left to be taken back
   */
  public Optional<String> takeBack() throws WorkshopException {
    if (changes.isEmpty()) {
      return Optional.empty();
    }
    Change last = changes.peek();
    for (Map.Entry<String, String> was : last.before().entrySet()) {
      if (was.getValue() == null) {
        settings.unset(was.getKey());
      } else {
        settings.set(was.getKey(), was.getValue());
      }
    }
    changes.pop();
    last.then().run();
    return Optional.of(last.what());
  }
}
