package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.run.PoorRunException;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderReader;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.uncertainty.Warning;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.GradeBasis;
import sagwright.workshop.Run;
import sagwright.workshop.Settings;
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
  private final SpeciesTable species;

  public GradeBlank(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.species = species;
    this.reader = new SheetReader(species);
  }

  /**
   * A grade that was stored.
   *
   * @param json the answer of docs/contract.md, section 5
   */
  public record Graded(long gradeId, ForecastShaft.Answer answer, String json) {}

  /**
   * @throws PoorRunException where the blank has no run that counts
   */
  public Graded grade(String tag, String orderNumber) throws WorkshopException, PoorRunException {
    Blank blank = workshop.blanks().require(tag);
    WorkshopOrder workshopOrder = workshop.orders().require(orderNumber);
    Optional<Run> latest = workshop.runs().latestCounting(blank);
    if (latest.isEmpty()) {
      throw new PoorRunException(blank.tag() + " has no run that counts");
    }
    CaliperEntry calipers = workshop.blanks().caliperNow(blank);
    Sureness sureness = sureness();
    try {
      Sheet tested = reader.read(workshop.runs().sheet(latest.get()));
      Sheet now = reader.read(calipers.document());
      Order order = OrderReader.read(workshopOrder.document());
      ForecastShaft.Answer answer =
          new ForecastShaft(species, sureness).of(tested, now.shaft(), order);
      List<Warning> warnings = new ArrayList<>(answer.evaluation().warnings());
      TestWarning.of(workshop, latest.get()).ifPresent(warnings::add);
      String json = AnswerWriter.forecast(blank.tag(), answer.graded(), tested.assumed(), warnings);
      GradeBasis basis =
          new GradeBasis(
              workshopOrder.versionId(),
              calipers.id(),
              List.of(latest.get().id()),
              sureness.chance());
      return new Graded(workshop.grades().add(blank, basis, json), answer, json);
    } catch (BadDocumentException e) {
      throw new WorkshopException("the record of " + blank.tag() + ": " + e.getMessage());
    }
  }

  private Sureness sureness() throws WorkshopException {
    Optional<String> set = workshop.settings().get(Settings.SURENESS);
    return set.isEmpty() ? Sureness.USUAL : new Sureness(Double.parseDouble(set.get()));
  }
}
