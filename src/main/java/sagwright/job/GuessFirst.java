package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Guess;
import sagwright.workshop.Run;
import sagwright.workshop.Settings;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** A guess by hand before the bench is asked: whether the shop wants it, and what was guessed. */
public final class GuessFirst {
  private static final String YES = "yes";

  private final Workshop workshop;

  public GuessFirst(Workshop workshop) {
    this.workshop = workshop;
  }

  public boolean isOn() throws WorkshopException {
    return workshop.settings().get(Settings.GUESS_FIRST).filter(YES::equals).isPresent();
  }

  public void set(boolean on) throws WorkshopException {
    workshop.settings().set(Settings.GUESS_FIRST, on ? YES : "no");
  }

  /** Initials of whose hand is at work; empty where none were set. */
  public String hand() throws WorkshopException {
    return workshop.settings().get(Settings.INITIALS).orElse("");
  }

  /** Another hand is at work from now on. */
  public void handTo(String initials) throws WorkshopException {
    workshop.settings().set(Settings.INITIALS, initials);
  }

  /**
   * Keeps what was guessed before a run.
   *
   * @param stiffnessNPerMm of the shaft as it lay
   */
  public void keep(Run run, double stiffnessNPerMm) throws WorkshopException {
    workshop.guesses().add(run.id(), stiffnessNPerMm);
  }

  /** How a hand has learnt; runs that do not count teach nothing. */
  public HandLearning learning(String hand) throws WorkshopException {
    List<HandLearning.Felt> felt = new ArrayList<>();
    for (Guess guess : workshop.guesses().all()) {
      String whose = guess.initials() == null ? "" : guess.initials();
      if (!whose.equalsIgnoreCase(hand)) {
        continue;
      }
      Run run = workshop.runs().run(guess.runId());
      if (run.counts()) {
        JsonLine answer = JsonLine.parse(run.outcome().answer());
        felt.add(
            new HandLearning.Felt(
                guess.at(),
                answer.text("tag"),
                guess.stiffnessNPerMm(),
                answer.number("shaftStiffnessNPerMm")));
      }
    }
    return new HandLearning(hand, felt);
  }
}
