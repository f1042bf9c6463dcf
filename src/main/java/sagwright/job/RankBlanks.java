package sagwright.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sagwright.choose.Candidate;
import sagwright.choose.OrderTrial;
import sagwright.choose.Ranking;
import sagwright.choose.RankingWeights;
import sagwright.choose.Standing;
import sagwright.grade.Order;
import sagwright.job.StandingBlanks.StandingBlank;
import sagwright.sheet.AnswerWriter;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.JsonLine;
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
    /** The line of docs/contract.md, section 7. */
    public String json() {
      return standing.canServe()
          ? AnswerWriter.ranked(standing.tag(), standing.graded(), wood.assumed(), wood.warnings())
          : new JsonLine()
              .put("tag", standing.tag())
              .put("cannot", standing.obstacle().inWords())
              .toString();
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
    List<StandingBlank> own = new ArrayList<>();
    List<StandingBlank> elsewhere = new ArrayList<>();
    for (StandingBlank blank : blanks.all()) {
      boolean isPromisedHere = stored.number().equals(blank.kept().state().promisedTo());
      if (isPromisedHere || trial.takes(blank.shaft().species())) {
        (isPromisedHere || blank.isFree() ? own : elsewhere).add(blank);
      }
    }
    RankingWeights weights = settings.rankingWeights();
    return new Answer(
        trial.order(), weights, ranked(trial, own, weights), ranked(trial, elsewhere, weights));
  }

  private static List<Ranked> ranked(
      OrderTrial trial, List<StandingBlank> blanks, RankingWeights weights) {
    Map<String, StandingBlank> byTag = new HashMap<>();
    List<Candidate> candidates = new ArrayList<>(blanks.size());
    for (StandingBlank blank : blanks) {
      byTag.put(blank.kept().blank().tag(), blank);
      candidates.add(blank.candidate());
    }
    return Ranking.of(trial, candidates, weights).stream()
        .map(
            standing -> {
              StandingBlank blank = byTag.get(standing.tag());
              return new Ranked(
                  withBow(standing, blank.shaft().bowMm()),
                  blank.kept().blank(),
                  blank.kept().state(),
                  blank.wood());
            })
        .toList();
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
