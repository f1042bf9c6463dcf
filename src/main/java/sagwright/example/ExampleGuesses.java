package sagwright.example;

import java.util.Random;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * What two hands guessed before the bench was asked: a maker's, and an apprentice's that begins by
 * calling soft shafts too stiff and learns.
 */
final class ExampleGuesses {
  private static final double MIDDLE_N_PER_MM = 4.8;
  private static final int LEARNING_GUESSES = 18;

  private final Workshop workshop;
  private int byApprentice;

  ExampleGuesses(Workshop workshop) {
    this.workshop = workshop;
  }

  /** Whose hand guesses next; guesses and runs bear the same initials. */
  static String hand(String tag) {
    return Math.floorMod(tag.hashCode(), 3) == 0
        ? ExampleWorkshop.MAKER
        : ExampleWorkshop.APPRENTICE;
  }

  void guess(Run run, String initials) throws WorkshopException {
    if (run.outcome().answer() == null) {
      return;
    }
    double answer = JsonLine.parse(run.outcome().answer()).number("shaftStiffnessNPerMm");
    Random random = ExampleRack.randomOf("guess before run " + run.id());
    boolean learns = initials.equals(ExampleWorkshop.APPRENTICE);
    double fresh = learns ? Math.exp(-(double) byApprentice++ / LEARNING_GUESSES) : 0;
    double towardsMiddle = 0.05 + 0.35 * fresh;
    double scatter = 0.045 + 0.14 * fresh;
    double felt =
        answer
            * Math.pow(MIDDLE_N_PER_MM / answer, towardsMiddle)
            * Math.exp(scatter * random.nextGaussian());
    workshop.guesses().add(run.id(), Math.max(0.5, Math.round(10 * felt) / 10.0));
  }
}
