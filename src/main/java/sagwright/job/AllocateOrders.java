package sagwright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sagwright.choose.Allocation;
import sagwright.choose.Allocator;
import sagwright.choose.Candidate;
import sagwright.choose.ChanceTable;
import sagwright.choose.OrderTrial;
import sagwright.choose.PromiseCost;
import sagwright.grade.Ask;
import sagwright.grade.Sureness;
import sagwright.job.StandingBlanks.StandingBlank;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Pairs all open orders with free blanks at once: docs/contract.md, section 7. */
public final class AllocateOrders {
  private final Workshop workshop;
  private final StandingBlanks blanks;

  public AllocateOrders(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.blanks = new StandingBlanks(workshop, species);
  }

  /**
   * All open orders at once, as they came in.
   *
   * @param asks by the orders' numbers
   * @param greatest with the greatest sum of chances
   * @param firstCome what would come of it if each in turn took its best
   */
  public record Answer(
      ChanceTable chances, Map<String, Ask> asks, Allocation greatest, Allocation firstCome) {
    public Answer {
      asks = Map.copyOf(asks);
    }

    /**
     * What it would mean to promise a blank now.
     *
     * @param promise an open order and a free blank, with that order's chance
     */
    public PromiseCost costOf(Allocation.Pair promise) {
      return Allocator.costOf(chances, promise);
    }
  }

  public Answer all() throws WorkshopException {
    Sureness sureness = new ShopSettings(workshop).sureness();
    List<StandingBlank> free = blanks.all().stream().filter(StandingBlank::isFree).toList();
    List<Candidate> candidates = free.stream().map(StandingBlank::candidate).toList();
    List<ChanceTable.Contest> contests = new ArrayList<>();
    Map<String, Ask> asks = new HashMap<>();
    for (WorkshopOrder stored : asTheyCameIn()) {
      OrderTrial trial = new OrderTrial(RankBlanks.read(stored), sureness);
      asks.put(stored.number(), trial.order().ask());
      List<Candidate> ofSpecies = new ArrayList<>();
      for (int i = 0; i < free.size(); i++) {
        if (trial.takes(free.get(i).shaft().species())) {
          ofSpecies.add(candidates.get(i));
        }
      }
      contests.add(new ChanceTable.Contest(stored.number(), trial, ofSpecies));
    }
    ChanceTable table = ChanceTable.of(contests);
    return new Answer(
        table, asks, Allocator.greatest(table), Allocator.firstComeFirstServed(table));
  }

  private List<WorkshopOrder> asTheyCameIn() throws WorkshopException {
    return workshop.orders().open().stream()
        .sorted(Comparator.comparingLong(WorkshopOrder::id))
        .toList();
  }
}
