package sagwright.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sagwright.ChildProgram;
import sagwright.Lateness;

/** Programs that die in mid-run, and programs that work on one file at once. */
class TwoProgramsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 60, 400})
  void aKilledProgramLosesNoMoreThanTheLastTenthOfASecond(int lines) throws Exception {
    killAfter(lines);
  }

  /** Outside the ordinary run: kills at a hundred other moments. */
  @Tag("long")
  @RepeatedTest(100)
  void aProgramKilledAtAnyMomentLosesNoMore(RepetitionInfo repetition) throws Exception {
    killAfter(1 + new Random(repetition.getCurrentRepetition()).nextInt(300));
  }

  private void killAfter(int lines) throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder);
        Lateness lateness = Lateness.watch()) {
      Blank blank = workshop.blanks().enter(WorkshopFixture.sheet("25-014"));
      Process program = start("run", workshop.file().toString());
      List<String> given = new ArrayList<>();
      long killedMs;
      try (BufferedReader out = reader(program)) {
        while (given.size() < lines) {
          given.add(out.readLine());
        }
        assertEquals(0, workshop.cutOffRuns().count(), "it goes on");
        killedMs = System.currentTimeMillis();
        assertTrue(program.toHandle().destroyForcibly());
        for (String line = out.readLine(); line != null; line = out.readLine()) {
          given.add(line);
        }
      }
      assertTrue(program.waitFor(30, TimeUnit.SECONDS));
      CutOffRun cut = workshop.cutOffRuns().takeAll().get(0);
      String wire = new String(cut.wire(), StandardCharsets.US_ASCII);
      assertEquals(blank, cut.start().blank());
      // what the killed program had no processor to write by it could not keep
      long writtenMs = killedMs - 100 - Math.round(10_000 * lateness.worstS());
      int kept = 0;
      for (String line : given) {
        String[] words = line.split(" ");
        if (words.length == 2 && Long.parseLong(words[1]) <= writtenMs) {
          assertTrue(wire.contains(words[0] + "\n"), words[0] + " of " + wire.length());
          kept++;
        }
      }
      assertTrue(lines < 200 || kept > 0 || lateness.worstS() > 0.005);
      cut.journal().close();
    }
  }

  @Test
  void twoProgramsEnterBlanksAtOnceAndNoneIsLost() throws Exception {
    try (Workshop workshop = WorkshopFixture.create(folder)) {
      List<Process> programs = new ArrayList<>();
      for (String lot : List.of("A", "B")) {
        programs.add(start("blanks", workshop.file().toString(), lot, "60"));
      }
      for (int i = 0; i < 60; i++) {
        workshop.blanks().enter(WorkshopFixture.sheet("C-" + i));
      }
      for (Process program : programs) {
        assertTrue(program.waitFor(60, TimeUnit.SECONDS));
        assertEquals(0, program.exitValue());
      }
      assertEquals(180, workshop.blanks().all().size());
    }
  }

  @Test
  void twoProgramsThatMakeTheFileAtOnceMakeOne() throws Exception {
    String file = folder.resolve("new.db").toString();
    List<Process> programs = new ArrayList<>();
    for (String lot : List.of("A", "B", "C")) {
      programs.add(start("blanks", file, lot, "5"));
    }
    for (Process program : programs) {
      assertTrue(program.waitFor(60, TimeUnit.SECONDS));
      assertEquals(0, program.exitValue());
    }
    try (Workshop workshop = Workshop.open(Path.of(file), WorkshopFixture.keeper())) {
      assertEquals(15, workshop.blanks().all().size());
    }
  }

  private static Process start(String... args) throws Exception {
    return ChildProgram.start(List.of(), WritingProgram.class.getName(), List.of(args));
  }

  private static BufferedReader reader(Process program) {
    return new BufferedReader(
        new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8));
  }
}
