package sagwright.example;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * What was done in the example workshop, each thing with its day; written down in the order of the
 * days, as the records of a real workshop grow.
 */
final class Diary {
  private static final int FIRST_HOUR = 8;
  private static final int WORKING_MINUTES = 540;

  private final LocalDate today;
  private final List<Entry> entries = new ArrayList<>();

  /** Something that is entered. */
  interface Task {
    void enter() throws WorkshopException;
  }

  private record Entry(Instant at, String initials, Task task) {}

  Diary(LocalDate today) {
    this.today = today;
  }

  LocalDate day(int daysAgo) {
    return today.minusDays(daysAgo);
  }

  /**
   * @param daysAgo one or more
   * @param share of the working day, 0 to 1
   * @param initials whose hand
   */
  void on(int daysAgo, double share, String initials, Task task) {
    Instant at =
        day(daysAgo)
            .atTime(FIRST_HOUR, 0)
            .plusSeconds(Math.round(share * WORKING_MINUTES * 60))
            .toInstant(ZoneOffset.UTC);
    entries.add(new Entry(at, initials, task));
  }

  /** Enters everything, oldest first. */
  void write(Workshop workshop, ExampleClock clock, ExampleWorkshop.Progress progress)
      throws WorkshopException {
    List<Entry> inOrder = new ArrayList<>(entries);
    inOrder.sort(Comparator.comparing(Entry::at));
    String signs = "";
    for (int i = 0; i < inOrder.size(); i++) {
      Entry entry = inOrder.get(i);
      clock.set(entry.at());
      if (!entry.initials().equals(signs)) {
        signs = entry.initials();
        workshop.settings().set(Settings.INITIALS, signs);
      }
      entry.task().enter();
      progress.at(i + 1, inOrder.size());
    }
  }
}
