package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import sagwright.choose.OrderTrial;
import sagwright.choose.Ranking;
import sagwright.choose.RankingWeights;
import sagwright.choose.Standing;
import sagwright.grade.Order;
import sagwright.job.StandingBlanks.StandingBlank;
import sagwright.sheet.AnswerLines;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.OrderReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.BlankState;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Puts a workshop's blanks in order for one order: docs/contract.md, section 7. */
public final class RankBlanks {
  private final Workshop workshop;
  private final StandingBlanks blanks;

  public RankBlanks(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.blanks = new StandingBlanks(workshop, species);
  }

  /**
   * A blank in its place.
   *
   * @param state promised to this order, to another, or free
   * @param wood null where no run counts
   */
  public record Ranked(Standing standing, Blank blank, BlankState state, KnownWood wood) {
    /** Adds the line of docs/contract.md, section 7. */
    public void addTo(AnswerLines lines) {
      if (standing.canServe()) {
        lines.addRanked(standing.tag(), standing.graded(), wood.assumed(), wood.warnings());
      } else {
        lines.addCannot(standing.tag(), standing.obstacle().inWords());
      }
    }
  }

  /**
   * An order's blanks.
   *
   * @param weights what ranks them
   * @param blanks those that are free, and the one that is promised to this order; best first
   * @param promisedElsewhere those of its species that are promised to other orders, best first
   */
  public record Answer(
      Order order, RankingWeights weights, List<Ranked> blanks, List<Ranked> promisedElsewhere) {
    public Answer {
      blanks = List.copyOf(blanks);
      promisedElsewhere = List.copyOf(promisedElsewhere);
    }
  }

  public Answer of(WorkshopOrder stored) throws WorkshopException {
    ShopSettings settings = new ShopSettings(workshop);
    OrderTrial trial = new OrderTrial(read(stored), settings.sureness());
    List<Ranked> held =
        blanks.each(
            (blank, sink) -> {
              if (blank.isPromisedTo(stored.number()) || trial.takes(blank.shaft().species())) {
                sink.accept(held(trial, blank));
              }
            });
    List<Ranked> own = new ArrayList<>(held.size());
    List<Ranked> elsewhere = new ArrayList<>();
    for (Ranked each : held) {
      String promisedTo = each.state().promisedTo();
      boolean isForThisOrder = promisedTo == null || promisedTo.equals(stored.number());
      (isForThisOrder ? own : elsewhere).add(each);
    }
    RankingWeights weights = settings.rankingWeights();
    return new Answer(
        trial.order(),
        weights,
        Ranking.of(own, Ranked::standing, weights),
        Ranking.of(elsewhere, Ranked::standing, weights));
  }

  private static Ranked held(OrderTrial trial, StandingBlank blank) {
    return new Ranked(
        withBow(trial.standing(blank.candidate()), blank.shaft().bowMm()),
        blank.kept().blank(),
        blank.kept().state(),
        blank.wood());
  }

  /** What a bow makes doubtful puts no blank in another place: it is said beside it. */
  private static Standing withBow(Standing standing, Double bowMm) {
    return bowMm == null || !standing.canServe()
        ? standing
        : new Standing(standing.candidate(), BowWarning.beside(standing.graded(), bowMm), null);
  }

  static Order read(WorkshopOrder stored) throws WorkshopException {
    try {
      return OrderReader.read(stored.document());
    } catch (BadDocumentException e) {
      throw new WorkshopException("order " + stored.number() + ": " + e.getMessage());
    }
  }
}
