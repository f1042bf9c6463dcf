package sagwright.job;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import sagwright.choose.RankingWeights;
import sagwright.grade.Sureness;
import sagwright.grade.WordScale;
import sagwright.wood.SafeStress;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Note;
import sagwright.workshop.Run;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** All that choosing a blank for an order needs of a workshop. Slow things: for the work thread. */
public final class ChoosingShop {
  private final Workshop workshop;
  private final RankBlanks rankBlanks;
  private final AllocateOrders allocateOrders;
  private final LayBlank runs;
  private final SpeciesTable species;
  private final InstantSource clock;

  public ChoosingShop(Workshop workshop, SpeciesTable species, InstantSource clock) {
    this.workshop = workshop;
    this.species = species;
    this.clock = clock;
    this.rankBlanks = new RankBlanks(workshop, species);
    this.allocateOrders = new AllocateOrders(workshop, species);
    this.runs = new LayBlank(workshop, species, new SafeLoad(species, SafeStress.ASSUMED_SHARE));
  }

  public WordScale wordScale() throws WorkshopException {
    return new ShopSettings(workshop).wordScale();
  }

  /** The numbers of the open orders, rising. */
  public List<String> openOrders() throws WorkshopException {
    return workshop.orders().open().stream().map(WorkshopOrder::number).toList();
  }

  /**
   * An order and its blanks.
   *
   * @param number as it was first written
   * @param wood how all blanks look and season
   * @param promisedTag the blank that is promised to it, null for none
   */
  public record Choice(
      String number,
      RankBlanks.Answer ranked,
      WoodRecords wood,
      String promisedTag,
      Sureness sureness) {}

  public Choice choose(String number) throws WorkshopException {
    WorkshopOrder stored = workshop.orders().require(number);
    return new Choice(
        stored.number(),
        rankBlanks.of(stored),
        WoodRecords.of(workshop, species, clock.instant()),
        workshop.promises().blankOf(stored).map(Blank::tag).orElse(null),
        new ShopSettings(workshop).sureness());
  }

  /** All open orders and free blanks at once, to be asked what promises would cost. */
  public AllocateOrders.Answer allOrders() throws WorkshopException {
    return allocateOrders.all();
  }

  /**
   * What the records of one blank say besides.
   *
   * @param latest the newest of its runs that count, worked out
   * @param notes what somebody wrote, oldest first
   */
  public record Look(Optional<TestedRun> latest, List<Note> notes) {
    public Look {
      notes = List.copyOf(notes);
    }

    /** In percent, as it was at the run; null where not measured. */
    public Double moisturePercent() {
      return latest.map(run -> run.sheet().shaft().moisturePercent()).orElse(null);
    }
  }

  public Look look(String tag) throws WorkshopException {
    Blank blank = workshop.blanks().require(tag);
    Optional<Run> latest = workshop.runs().latestCounting(blank);
    return new Look(
        latest.isEmpty() ? Optional.empty() : Optional.of(runs.tested(latest.get())),
        workshop.notes().of(blank));
  }

  /** What ranks blanks from now on. */
  public void weigh(RankingWeights weights) throws WorkshopException {
    new ShopSettings(workshop).setRankingWeights(weights);
  }

  /** Takes the workshop's last action back, and says which. */
  public String undoLast() throws WorkshopException {
    return new TakeBack(workshop, species).last();
  }

  public void promise(String tag, String number) throws WorkshopException {
    workshop.promises().make(workshop.blanks().require(tag), workshop.orders().require(number));
  }

  public void takeBack(String tag, String number) throws WorkshopException {
    workshop.promises().release(workshop.blanks().require(tag), workshop.orders().require(number));
  }
}
