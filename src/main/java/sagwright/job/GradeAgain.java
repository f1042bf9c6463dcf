package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.run.PoorRunException;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Grade;
import sagwright.workshop.Grades;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/**
 * Grades again what rests on something that has changed: a new run, newer calipers, another version
 * of the order, a calibration, how sure the shop wants to be. The older grade stays beside the
 * newer; where nothing comes out otherwise, nothing is stored.
 */
public final class GradeAgain {
  private final Workshop workshop;
  private final GradeBlank gradeBlank;

  public GradeAgain(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.gradeBlank = new GradeBlank(workshop, species);
  }

  /**
   * A grade that was followed by a newer one.
   *
   * @param gradeId of the newer one
   */
  public record Followed(Blank blank, Grade before, long gradeId) {}

  /** All grades of a blank. */
  public List<Followed> of(Blank blank) throws WorkshopException {
    return again(workshop.grades().standingOf(blank));
  }

  /** All grades for an order. */
  public List<Followed> of(WorkshopOrder order) throws WorkshopException {
    return again(workshop.grades().standingFor(order));
  }

  /** All grades there are: after something that all may rest on. */
  public List<Followed> all() throws WorkshopException {
    return again(workshop.grades().standing());
  }

  private List<Followed> again(List<Grades.Standing> standing) throws WorkshopException {
    List<Followed> followed = new ArrayList<>();
    for (Grades.Standing old : standing) {
      WorkshopOrder order = workshop.orders().require(old.grade().orderNumber());
      try {
        GradeBlank.WorkedOut now = gradeBlank.workOut(old.blank(), order);
        boolean isAsItWas =
            now.basis().equals(old.grade().basis()) && now.json().equals(old.grade().answer());
        if (!isAsItWas) {
          long id = workshop.grades().addAgain(old.blank(), now.basis(), now.json());
          followed.add(new Followed(old.blank(), old.grade(), id));
        }
      } catch (PoorRunException e) {
        continue; // no run counts any more: there is nothing to grade it by
      }
    }
    return followed;
  }
}
