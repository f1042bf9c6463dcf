package sagwright.workshop;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.locks.LockSupport;

/** A program of its own that writes a run until it is killed, or enters many blanks. */
final class WritingProgram {
  private WritingProgram() {}

  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[1]);
    try (Workshop workshop = Workshop.openOrCreate(file, WorkshopFixture.keeper())) {
      if (args[0].equals("run")) {
        writeRun(workshop);
      } else {
        enterBlanks(workshop, args[2], Integer.parseInt(args[3]));
      }
    }
  }

  /** Tells after each line which one it gave and when, by the clock of the machine. */
  private static void writeRun(Workshop workshop) throws Exception {
    Blank blank = workshop.blanks().require("25-014");
    RunJournal journal = workshop.runs().start(WorkshopFixture.start(blank));
    for (int i = 0; ; i++) {
      journal.append((i + "\n").getBytes(StandardCharsets.US_ASCII));
      System.out.println(i + " " + System.currentTimeMillis());
      LockSupport.parkNanos(1_000_000);
    }
  }

  private static void enterBlanks(Workshop workshop, String lot, int count) throws Exception {
    for (int i = 0; i < count; i++) {
      workshop.blanks().enter(WorkshopFixture.sheet(lot + "-" + i));
    }
  }
}
