package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sagwright.choose.OrderTrial;
import sagwright.choose.Ranking;
import sagwright.choose.RankingWeights;
import sagwright.choose.Standing;
import sagwright.finish.BlankWood;
import sagwright.finish.ButtBore;
import sagwright.grade.Grader;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.grade.WoodWanted;
import sagwright.job.StandingBlanks.StandingBlank;
import sagwright.modulus.ShearRatio;
import sagwright.wood.Species;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * Lays an order that is still being written down into the blanks of the rack. The records are read
 * once, by {@link #readAgain}; each keystroke then costs no look at the disk.
 */
public final class PlanFinish {
  private final Workshop workshop;
  private final SpeciesTable species;
  private final StandingBlanks blanks;
  private Map<String, StandingBlank> rack = Map.of();
  private Sureness sureness = Sureness.USUAL;
  private RankingWeights weights = RankingWeights.STIFFNESS_FIRST;
  private ButtBore bore = ButtBore.USUAL;

  public PlanFinish(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.species = species;
    this.blanks = new StandingBlanks(workshop, species);
  }

  /** Reads the rack and what the shop has set. */
  public void readAgain() throws WorkshopException {
    ShopSettings settings = new ShopSettings(workshop);
    sureness = settings.sureness();
    weights = settings.rankingWeights();
    bore = settings.buttBore();
    rack =
        blanks.all().stream()
            .collect(Collectors.toMap(b -> b.kept().blank().tag(), Function.identity()));
  }

  /**
   * @param order without problems (OrderCheck)
   * @param pickedTag null for the blank that is promised to the order, or else the best of the rack
   */
  public PlannedFinish plan(Order order, String pickedTag) {
    List<String> tags = new ArrayList<>();
    for (Standing standing : ranked(order)) {
      if (standing.canServe()) {
        tags.add(standing.tag());
      }
    }
    PlannedFinish.InBlank in = blank(order, pickedTag, tags);
    return in == null ? ownTaperAlone(order) : inBlank(order, in, tags);
  }

  private List<Standing> ranked(Order order) {
    OrderTrial trial = new OrderTrial(order, sureness);
    return Ranking.of(
        trial,
        rack.values().stream()
            .filter(blank -> blank.isPromisedTo(order.number()) || isForAnyOrder(trial, blank))
            .map(StandingBlank::candidate)
            .toList(),
        weights);
  }

  private static boolean isForAnyOrder(OrderTrial trial, StandingBlank blank) {
    return blank.isFree() && trial.takes(blank.shaft().species());
  }

  private PlannedFinish.InBlank blank(Order order, String pickedTag, List<String> bestFirst) {
    StandingBlank picked = pickedTag == null ? null : rack.get(pickedTag);
    if (picked != null && picked.wood() != null) {
      return in(picked, PlannedFinish.Why.PICKED);
    }
    Optional<StandingBlank> promised =
        rack.values().stream()
            .filter(blank -> blank.isPromisedTo(order.number()) && blank.wood() != null)
            .findFirst();
    if (promised.isPresent()) {
      return in(promised.get(), PlannedFinish.Why.PROMISED);
    }
    return bestFirst.isEmpty() ? null : in(rack.get(bestFirst.get(0)), PlannedFinish.Why.BEST);
  }

  private static PlannedFinish.InBlank in(StandingBlank blank, PlannedFinish.Why why) {
    return new PlannedFinish.InBlank(blank.kept().blank().tag(), blank.shaft().taper(), why);
  }

  private PlannedFinish ownTaperAlone(Order order) {
    return new PlannedFinish(
        order,
        null,
        List.of(),
        null,
        List.of(),
        List.of(),
        PlannedLead.of(order.finish(), order.ask(), null, bore),
        WoodWanted.by(order, ratio(order)));
  }

  private double ratio(Order order) {
    return species
        .find(order.species())
        .map(Species::modulusToShearRatio)
        .orElse(ShearRatio.ASSUMED_FOR_UNKNOWN_SPECIES);
  }

  private PlannedFinish inBlank(Order order, PlannedFinish.InBlank in, List<String> tags) {
    StandingBlank blank = rack.get(in.tag());
    BlankWood wood = blank.wood().in(blank.shaft());
    return PlannedFinish.of(in, tags, wood, new Grader(sureness).grade(wood, order), bore);
  }
}
