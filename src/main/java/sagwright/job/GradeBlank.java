package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.grade.GradedForecast;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.GradeBasis;
import sagwright.workshop.ShortRecord;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/**
 * Grades a blank for an order and keeps the grade on its record. The wood is what the blank's runs
 * have shown, the shape what the calipers said last.
 */
public final class GradeBlank {
  private final Workshop workshop;
  private final SheetReader reader;
  private final BlankModulus modulus;

  public GradeBlank(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
    this.modulus = new BlankModulus(workshop, species);
  }

  /**
   * A grade that was stored.
   *
   * @param json the answer of docs/contract.md, section 5
   */
  public record Graded(long gradeId, GradedForecast graded, String json) {}

  /** A grade that was worked out and is not stored yet. */
  record WorkedOut(Blank blank, GradedForecast graded, GradeBasis basis, String json) {}

  /**
   * Signed with the initials that the shop has set.
   *
   * @throws PoorRunException where the blank has no run that counts
   */
  public Graded grade(String tag, String orderNumber) throws WorkshopException, PoorRunException {
    return grade(tag, orderNumber, null);
  }

  /**
   * @param initials of who asks for it; null for those that the shop has set
   * @throws PoorRunException where the blank has no run that counts
   */
  public Graded grade(String tag, String orderNumber, String initials)
      throws WorkshopException, PoorRunException {
    WorkedOut grade =
        workOut(workshop.blanks().require(tag), workshop.orders().require(orderNumber));
    return new Graded(
        workshop.grades().add(grade.blank(), grade.basis(), grade.json(), initials),
        grade.graded(),
        grade.json());
  }

  /**
   * @throws PoorRunException where the blank has no run that counts
   */
  WorkedOut workOut(Blank blank, WorkshopOrder stored) throws WorkshopException, PoorRunException {
    Order order = RankBlanks.read(stored);
    ShortRecord kept = workshop.shortRecords(reader).of(blank);
    KnownWood wood =
        modulus
            .of(kept)
            .orElseThrow(() -> new PoorRunException(blank.tag() + " has no run that counts"));
    modulus.keepSurveys();
    Sureness sureness = new ShopSettings(workshop).sureness();
    GradedForecast graded =
        BowWarning.beside(
            new Grader(sureness).grade(wood.in(kept.shaft()), order), kept.shaft().bowMm());
    List<Warning> warnings = new ArrayList<>(wood.warnings());
    warnings.addAll(CalibrationChanged.since(workshop, wood.runIds()));
    String json = AnswerWriter.forecast(blank.tag(), graded, wood.assumed(), warnings);
    GradeBasis basis =
        new GradeBasis(stored.versionId(), kept.caliperEntryId(), wood.runIds(), sureness.chance());
    return new WorkedOut(blank, graded, basis, json);
  }
}
