package sagwright.job;

import java.util.List;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.Document;
import sagwright.sheet.DocumentReader;
import sagwright.sheet.OrderDocument;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Intake;
import sagwright.workshop.RunOutcome;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Brings sheets and orders into a workshop, each for itself. */
public final class ImportDocuments {
  private final Intake intake;
  private final DocumentReader reader;
  private final EvaluateRun evaluate;
  private final BlankModulus modulus;
  private final GradeAgain gradeAgain;

  public ImportDocuments(Workshop workshop, SpeciesTable species) {
    this.intake = workshop.intake(new SheetReader(species));
    this.reader = new DocumentReader(species);
    this.evaluate = new EvaluateRun(species);
    this.modulus = new BlankModulus(workshop, species);
    this.gradeAgain = new GradeAgain(workshop, species);
  }

  /**
   * What a document has become: a blank or an order; the other is null.
   *
   * @param runId null where there was no run
   * @param noAnswer why the run gave no answer; null where it gave one, or there was none
   */
  public record Brought(String tag, String orderNumber, Long runId, String noAnswer) {}

  /**
   * @param add whether it may join what is there already
   * @throws WorkshopException where it is there already; then the workshop is as it was
   */
  public Brought bring(String text, boolean add) throws BadDocumentException, WorkshopException {
    Document document = reader.read(text);
    if (document instanceof OrderDocument order) {
      WorkshopOrder arrived = intake.order(order.requireNumber(), add);
      gradeAgain.of(arrived);
      return new Brought(null, arrived.number(), null, null);
    }
    Sheet sheet = ((Sheet) document).requireTag();
    RunOutcome outcome = sheet.hasRun() ? evaluate.of(sheet, List.of()) : null;
    Intake.Arrival arrival = intake.sheet(sheet, outcome, add);
    if (outcome != null && outcome.answer() != null) {
      modulus.survey(arrival.blank());
    }
    gradeAgain.of(arrival.blank());
    return new Brought(
        arrival.blank().tag(),
        null,
        arrival.run() == null ? null : arrival.run().id(),
        outcome == null ? null : outcome.noAnswer());
  }
}
