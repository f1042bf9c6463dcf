package sagwright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sagwright.grade.Order;
import sagwright.grade.ReferenceCue;
import sagwright.modulus.BenchSetUp;
import sagwright.modulus.Shaft;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
import sagwright.sheet.Sheet;
import sagwright.sheet.SheetReader;
import sagwright.survey.SurveyProblem;
import sagwright.uncertainty.Estimate;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.BlankState;
import sagwright.workshop.Run;
import sagwright.workshop.ShortRecord;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/**
 * The finished cues that have lain on the bench: those that the shop has delivered, and visitors.
 */
public final class FinishedCues {
  private final Workshop workshop;
  private final SheetReader reader;
  private final BlankModulus modulus;
  private final BlankShaft shafts;

  public FinishedCues(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
    this.modulus = new BlankModulus(workshop, species);
    this.shafts = new BlankShaft(workshop, species);
  }

  /**
   * A finished cue that can be asked for again.
   *
   * @param order what it was made for, null for a visitor
   */
  public record FinishedCue(ReferenceCue cue, Order order) {}

  /** All with a run that counts: what was made for an order first, then visitors, each by tag. */
  public List<FinishedCue> all() throws WorkshopException {
    Map<String, WorkshopOrder> orders = new HashMap<>();
    for (WorkshopOrder order : workshop.orders().all()) {
      orders.put(order.number(), order);
    }
    List<FinishedCue> cues = new ArrayList<>();
    for (ShortRecord kept : workshop.shortRecords(reader).all()) {
      BlankState state = kept.state();
      boolean isFinished = BlankState.FINISHED_CUE.equals(state.stage());
      Optional<KnownWood> wood = isFinished ? modulus.of(kept) : Optional.empty();
      if (wood.isPresent()) {
        WorkshopOrder order = orders.get(state.promisedTo());
        cues.add(
            new FinishedCue(cue(kept, wood.get()), order == null ? null : RankBlanks.read(order)));
      }
    }
    modulus.keepSurveys();
    cues.sort(
        Comparator.comparing((FinishedCue known) -> known.order() == null)
            .thenComparing(known -> known.cue().name()));
    return cues;
  }

  private ReferenceCue cue(ShortRecord kept, KnownWood wood) throws WorkshopException {
    Shaft shaft = shafts.shaft(kept.blank());
    Run newest = workshop.runs().latestCounting(kept.blank()).orElseThrow();
    return new ReferenceCue(
        kept.blank().tag(),
        shaft.taper(),
        shaft.splice(),
        wood.modulusMPa(),
        wood.ratio(),
        measured(newest, shaft));
  }

  /** Null where the cue is not what it was at that run. */
  private ReferenceCue.Measured measured(Run run, Shaft now) throws WorkshopException {
    try {
      Sheet sheet = reader.read(workshop.runs().sheet(run));
      return SurveyProblem.isSameShaft(sheet.shaft(), now)
          ? new ReferenceCue.Measured(
              sheet.setUp().positions(), ofShaft(JsonLine.parse(run.outcome().answer()), sheet))
          : null;
    } catch (BadDocumentException e) {
      throw new WorkshopException("run " + run.id() + ": " + e.getMessage());
    }
  }

  /** The shaft's own stiffness 1/(1/k − C), and what the line and the frame leave open of it. */
  private static Estimate ofShaft(JsonLine answer, Sheet sheet) {
    double shown = answer.number("stiffnessNPerMm");
    double own = answer.number("shaftStiffnessNPerMm");
    BenchSetUp setUp = sheet.setUp();
    double byLine = answer.number("stiffnessStdUncertaintyNPerMm") * (own / shown) * (own / shown);
    double byFrame = own * own * setUp.frameComplianceUncertaintyMmPerN();
    return new Estimate(own, Math.hypot(byLine, byFrame));
  }
}
