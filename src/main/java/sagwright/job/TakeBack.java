package sagwright.job;

import sagwright.wood.SpeciesTable;
import sagwright.workshop.Action;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Takes the last action back that can be taken back; grades that rested on it are given again. */
public final class TakeBack {
  private final Workshop workshop;
  private final GradeAgain gradeAgain;

  public TakeBack(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /** What was taken back, in words. */
  public String last() throws WorkshopException {
    Action last = workshop.actions().undoLast();
    if (!workshop.grades().isEnteredBy(last)) {
      gradeAgain.all(); // a grade that was taken back stays so
    }
    return last.what();
  }
}
