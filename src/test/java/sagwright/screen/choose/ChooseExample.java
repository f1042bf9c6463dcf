package sagwright.screen.choose;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sagwright.beam.SetUp;
import sagwright.beam.Splice;
import sagwright.beam.Station;
import sagwright.beam.Taper;
import sagwright.choose.Candidate;
import sagwright.choose.OrderTrial;
import sagwright.choose.PromiseCost;
import sagwright.choose.Ranking;
import sagwright.choose.RankingWeights;
import sagwright.choose.Standing;
import sagwright.drawing.SeriesBars;
import sagwright.finish.BlankWood;
import sagwright.finish.Ferrule;
import sagwright.finish.FinishPlan;
import sagwright.finish.Weight;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.Order;
import sagwright.grade.Sureness;
import sagwright.grade.WordScale;
import sagwright.job.ChoosingShop;
import sagwright.job.RankBlanks;
import sagwright.job.WoodRecords;
import sagwright.modulus.ModulusAlong;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.AllOrders;
import sagwright.screen.choose.ChooseView.Closely;
import sagwright.screen.choose.ChooseView.Cost;
import sagwright.uncertainty.Estimate;
import sagwright.wood.Grain;
import sagwright.wood.Seasoning;
import sagwright.workshop.Blank;
import sagwright.workshop.BlankState;

/** An invented order and rack, held against each other as a workshop's would be. */
public final class ChooseExample {
  public static final String BEST = "25-014";

  private static final FinishPlan PLAN =
      new FinishPlan(
          Taper.round(List.of(Station.round(0, 9.5), Station.round(1473, 29)), 1473),
          0.05,
          8.0,
          new Ferrule(9.5, 8, 8500),
          new Splice(1060, 4, 1120, 15_500, 0),
          List.of(new Weight(1180, 1300, 12, 11_340)),
          List.of());

  private static final Order ORDER =
      new Order(
          "R-0007",
          "European ash",
          LocalDate.of(2026, 6, 30),
          null,
          PLAN,
          new Ask(
              new SetUp(100, 1100, 600, 600, 0), 2.1, 5, new Aim(556, 15.0), new Aim(415, 12.0)),
          List.of());

  /** Tag, modulus and its uncertainty in MPa, mass in g, thicker than the plan by so much in mm. */
  private record Wood(
      String tag, double modulusMPa, double uMPa, double massG, double spareMm, BlankState state) {}

  private static final BlankState FREE = new BlankState("near size", null, null);

  private static final List<Wood> RACK =
      List.of(
          new Wood(BEST, 11_180, 90, 432, 0.9, FREE),
          new Wood("25-031", 11_450, 110, 428, 1.0, FREE),
          new Wood("24-118", 11_520, 120, 446, 0.55, new BlankState("second turning", null, null)),
          new Wood("25-007", 11_020, 130, 420, 1.1, FREE),
          new Wood("25-022", 11_750, 150, 470, 0.4, FREE),
          new Wood("24-093", 10_720, 110, 431, 0.7, new BlankState("roughed", null, null)),
          new Wood("25-011", 11_960, 120, 441, 1.4, FREE),
          new Wood("25-040", 9_900, 100, 405, 1.6, FREE),
          new Wood("25-061", 13_600, 100, 455, 1.2, FREE),
          new Wood("25-009", 11_300, 100, 402, -0.31, FREE),
          new Wood("24-107", 11_300, 80, 433, 0.8, new BlankState("near size", "R-0004", null)));

  private ChooseExample() {}

  /** Some blanks may serve, some cannot; the best two were looked at. */
  public static ChooseView choosing() {
    return view(choice(List.of(), null), "");
  }

  /** The same, once the best is promised. */
  public static ChooseView promised() {
    return view(choice(List.of(), BEST), BEST + " from R-0007");
  }

  /** So many blanks that most are out of sight. */
  public static ChooseView thousands() {
    List<Wood> many = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      double spare = i % 7 == 0 ? -0.2 : 0.3 + (i % 23) / 10.0;
      many.add(
          new Wood("26-" + (10_000 + i), 9_000 + (i * 37) % 4000, 110, 400 + i % 60, spare, FREE));
    }
    return view(choice(many, null), "");
  }

  /** Nothing on the rack may serve. */
  public static ChooseView noneServes() {
    ChoosingShop.Choice all = choice(List.of(), null);
    List<RankBlanks.Ranked> cannot =
        all.ranked().blanks().stream().filter(b -> !b.standing().canServe()).toList();
    return view(
        new ChoosingShop.Choice(
            all.number(),
            new RankBlanks.Answer(
                ORDER, RankingWeights.STIFFNESS_FIRST, cannot, all.ranked().promisedElsewhere()),
            all.wood(),
            null,
            Sureness.USUAL),
        "");
  }

  /** No order has been taken yet. */
  public static ChooseView empty() {
    return new ChooseView(
        null,
        "",
        "",
        List.of(),
        List.of(),
        RankingWeights.STIFFNESS_FIRST,
        null,
        0.95,
        List.of(),
        null,
        "",
        null,
        ShopUnits.METRIC,
        false);
  }

  private static ChoosingShop.Choice choice(List<Wood> more, String promised) {
    OrderTrial trial = new OrderTrial(ORDER, Sureness.USUAL);
    Map<String, BlankState> states = new HashMap<>();
    List<Candidate> own = new ArrayList<>();
    List<Candidate> elsewhere = new ArrayList<>();
    List<Wood> all = new ArrayList<>(RACK);
    all.addAll(more);
    for (Wood wood : all) {
      states.put(wood.tag(), wood.state());
      (wood.state().isFree() ? own : elsewhere).add(candidate(wood));
    }
    own.add(Candidate.untested("25-052"));
    states.put("25-052", FREE);
    return new ChoosingShop.Choice(
        ORDER.number(),
        new RankBlanks.Answer(
            ORDER,
            RankingWeights.STIFFNESS_FIRST,
            ranked(trial, own, states),
            ranked(trial, elsewhere, states)),
        wood(all),
        promised,
        Sureness.USUAL);
  }

  private static List<RankBlanks.Ranked> ranked(
      OrderTrial trial, List<Candidate> candidates, Map<String, BlankState> states) {
    List<RankBlanks.Ranked> ranked = new ArrayList<>();
    for (Standing standing : Ranking.of(trial, candidates, RankingWeights.STIFFNESS_FIRST)) {
      Blank blank = new Blank(standing.tag().hashCode(), standing.tag());
      ranked.add(new RankBlanks.Ranked(standing, blank, states.get(standing.tag()), null));
    }
    return ranked;
  }

  private static Candidate candidate(Wood wood) {
    List<Station> stations = new ArrayList<>();
    int phase = wood.tag().hashCode() % 7;
    for (int x = 0; x <= 1500; x += 150) {
      double wave = 0.25 + 0.25 * Math.sin(x / 240.0 + phase);
      double plan = PLAN.diameterAt(Math.max(0, Math.min(1473, x - 8)));
      stations.add(Station.round(x, plan + wood.spareMm() + wave));
    }
    return new Candidate(
        wood.tag(),
        BlankWood.ofOneWood(
            Taper.round(stations, 1500),
            wood.massG(),
            ModulusAlong.constant(new Estimate(wood.modulusMPa(), wood.uMPa())),
            14));
  }

  private static ChooseView view(ChoosingShop.Choice choice, String back) {
    List<Closely> closely = new ArrayList<>();
    List<ChooseView.Row> serving = ChooseViews.serving(choice, ShopUnits.METRIC);
    for (ChooseView.Row row : serving.subList(0, Math.min(9, serving.size()))) {
      closely.add(closely(row));
    }
    return new ChooseView(
        ChooseViews.asked(choice),
        "open order 3 of 12",
        "",
        serving,
        ChooseViews.cannot(choice, ShopUnits.METRIC),
        RankingWeights.STIFFNESS_FIRST,
        ChooseViews.words(WordScale.AT_FIRST, ORDER.ask()),
        Sureness.USUAL.chance(),
        closely,
        new Cost(BEST, 11, new PromiseCost(0.99, 8.21, 7.94)),
        back,
        ALL_ORDERS,
        ShopUnits.METRIC,
        false);
  }

  private static final AllOrders ALL_ORDERS =
      new AllOrders(
          List.of(
              line("R-0003", "2.05 N/mm ± 5 %", "25-007", 0.97, "25-014", 0.99),
              line("R-0005", "2.25 N/mm ± 4 %", "25-061", 0.91, "25-061", 0.91),
              line("R-0007", "2.1 N/mm ± 5 %", "25-014", 0.995, "25-031", 0.99),
              line("R-0008", "2.15 N/mm ± 3 %", "25-031", 0.9, "25-022", 0.41),
              line("R-0009", "1.9 N/mm ± 5 %", "25-040", 0.88, "25-040", 0.88),
              line("R-0011", "2.6 N/mm ± 5 %", "", 0, "", 0)),
          4.66,
          4.18);

  private static AllOrders.Line line(
      String order, String asks, String atOnce, double a, String inTurn, double b) {
    return new AllOrders.Line(
        order, asks, new AllOrders.Gets(atOnce, a), new AllOrders.Gets(inTurn, b));
  }

  /** Some were looked at, most are settled, one is nearly, one is not. */
  private static WoodRecords wood(List<Wood> all) {
    Map<Long, Grain> grains = new HashMap<>();
    Map<Long, Seasoning> seasonings = new HashMap<>();
    for (int i = 0; i < all.size(); i++) {
      long id = all.get(i).tag().hashCode();
      if (i % 5 != 4) {
        grains.put(id, new Grain(6.0 + i % 6, Grain.RunOut.values()[i % 7 / 3], null));
      }
      boolean isDrying = i == 3 || i == 9;
      seasonings.put(
          id,
          new Seasoning(
              Duration.ofDays(12 + 5 * i),
              true,
              isDrying ? Seasoning.State.DRYING : Seasoning.State.SETTLED,
              isDrying ? 0.9 : 0.1,
              isDrying ? i : 0));
    }
    seasonings.put(
        (long) "25-052".hashCode(),
        new Seasoning(Duration.ofDays(3), true, Seasoning.State.UNKNOWN, Double.NaN, Double.NaN));
    return new WoodRecords(grains, seasonings);
  }

  private static Closely closely(ChooseView.Row row) {
    double k = row.modulusMPa().value() / 3700 + (row.cut().leastSpareMm() - 0.7) / 1.5;
    double[] loadN = IntStream.rangeClosed(0, 100).mapToDouble(i -> 0.2 * i).toArray();
    double[] mm = IntStream.rangeClosed(0, 100).mapToDouble(i -> 0.2 * i / k).toArray();
    double part = 20 * row.cut().leastSpareMm();
    return new Closely(
        row.tag(),
        mm,
        loadN,
        k,
        "2026-11-25",
        "supports 100 and 1100, load 600 mm",
        List.of(
            new SeriesBars.Bar("the diameters", 140 + part, Figures.rounded(140 + part, 0)),
            new SeriesBars.Bar("the scatter of the readings", 61 + part, "71"),
            new SeriesBars.Bar("the load cell's calibration", 24, "24"),
            new SeriesBars.Bar("the place of the load", 11, "11")),
        11.2,
        row.tag().endsWith("14")
            ? List.of(
                "2026-11-20 rings like a bell; the butt end has a small dark fleck",
                "2025-03-03 from the board with 25-013")
            : List.of());
  }

  /** Does nothing by itself. */
  public static class Idle implements ChooseActions {
    @Override
    public void refresh() {}

    @Override
    public void open(String number) {}

    @Override
    public void step(int by) {}

    @Override
    public void lookAt(List<String> tags) {}

    @Override
    public void promise(String tag, String order) {}

    @Override
    public void takeBack() {}

    @Override
    public void undo() {}

    @Override
    public void weigh(RankingWeights weights) {}

    @Override
    public void allOrders() {}
  }
}
