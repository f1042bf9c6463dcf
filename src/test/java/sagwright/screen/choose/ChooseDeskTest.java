package sagwright.screen.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.choose.RankingWeights;
import sagwright.job.ChoosingShop;
import sagwright.screen.Mailbox;
import sagwright.screen.ShopUnits;
import sagwright.screen.choose.ChooseView.AllOrders;
import sagwright.sheet.SheetReader;
import sagwright.wood.Grain;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Blank;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class ChooseDeskTest {
  private final Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(ShopUnits.METRIC));
  private final AtomicReference<Instant> now =
      new AtomicReference<>(Instant.parse("2026-03-02T09:00:00Z"));
  private Workshop workshop;
  private ChooseDesk desk;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    workshop = ChooseWorkshop.create(folder, now::get);
    ChoosingShop shop = new ChoosingShop(workshop, SpeciesTable.published(), now::get);
    desk = new ChooseDesk(shop, Runnable::run, mailbox);
    desk.refresh();
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
  }

  private void later(int days) {
    now.updateAndGet(at -> at.plus(Duration.ofDays(days)));
  }

  private ChooseView view() {
    return mailbox.newest();
  }

  private List<String> serving() {
    return view().serving().stream().map(ChooseView.Row::tag).toList();
  }

  @Test
  void theFirstOpenOrderIsShownItsBlanksBestFirstAndTheSoftOneApart() {
    assertThat(view().order().number()).isEqualTo(ChooseWorkshop.ORDER);
    assertThat(view().place()).isEqualTo("open order 1 of 2");
    assertThat(serving()).containsExactly(ChooseWorkshop.BEST, ChooseWorkshop.SECOND);
    assertThat(view().cannot()).hasSize(1);
    assertThat(view().cannot().get(0).tag()).isEqualTo(ChooseWorkshop.SOFT);
    assertThat(view().cannot().get(0).reason()).startsWith("softer: ");
    // docs/contract.md, section 5: that modulus gives 2.295855986 N/mm, 1.888 mm least spare
    ChooseView.Row second = view().serving().get(1);
    assertThat(second.stiffnessNPerMm().value()).isCloseTo(2.29586, within(5e-5));
    assertThat(second.cut().leastSpareMm()).isCloseTo(1.88813, within(1e-4));
  }

  @Test
  void aPromiseCostsTheOtherOrderTheChanceBetweenBestAndSecond() {
    desk.lookAt(List.of(ChooseWorkshop.BEST));
    ChooseView.Cost cost = view().cost();
    assertThat(cost.otherOrders()).isEqualTo(1);
    assertThat(cost.cost().othersWith()).isCloseTo(view().serving().get(0).chance(), within(1e-12));
    assertThat(cost.cost().othersWithout())
        .isCloseTo(view().serving().get(1).chance(), within(1e-12));
  }

  @Test
  void aPickIsLookedAtClosely() {
    desk.lookAt(List.of(ChooseWorkshop.SECOND));
    ChooseView.Closely closely = view().closely(ChooseWorkshop.SECOND).orElseThrow();
    assertThat(closely.loadN()).containsExactly(0, 4, 8, 12, 16);
    assertThat(closely.stiffnessNPerMm()).isCloseTo(4.1374, within(1e-3)); // the frame taken off
    assertThat(closely.moisturePercent()).isEqualTo(11.2);
  }

  @Test
  void aPromisedBlankIsOutOfEveryOtherOrdersListAndComesBackByOneStep() {
    desk.promise(ChooseWorkshop.BEST, ChooseWorkshop.ORDER);
    assertThat(view().order().promisedTag()).isEqualTo(ChooseWorkshop.BEST);
    assertThat(serving()).startsWith(ChooseWorkshop.BEST);
    desk.step(1);
    assertThat(view().order().number()).isEqualTo(ChooseWorkshop.OTHER_ORDER);
    assertThat(serving()).containsExactly(ChooseWorkshop.SECOND);
    assertThat(view().cannot().get(0).reason()).isEqualTo("promised to R-0007");
    desk.takeBack();
    assertThat(view().order().number()).isEqualTo(ChooseWorkshop.ORDER);
    assertThat(view().order().promisedTag()).isNull();
    assertThat(ChooseWorkshop.promised(workshop, ChooseWorkshop.ORDER)).isEmpty();
  }

  @Test
  void aPromiseThatCannotBeMadeIsSaidAndNothingChanges() {
    desk.promise(ChooseWorkshop.BEST, ChooseWorkshop.ORDER);
    desk.promise(ChooseWorkshop.SECOND, ChooseWorkshop.ORDER);
    assertThat(view().said()).isEqualTo("25-002 is promised to R-0007 already");
    assertThat(ChooseWorkshop.promised(workshop, ChooseWorkshop.ORDER))
        .contains(ChooseWorkshop.BEST);
  }

  @Test
  void anOrderThatIsNotThereIsSaidAndTheShownOneStays() {
    desk.open("R-0099");
    assertThat(view().said()).isEqualTo("there is no order R-0099 in this workshop");
    assertThat(view().order().number()).isEqualTo(ChooseWorkshop.ORDER);
    desk.open("r-0008");
    assertThat(view().order().number()).isEqualTo(ChooseWorkshop.OTHER_ORDER);
  }

  @Test
  void whatRanksIsSetByTheShopAndSaid() {
    assertThat(view().weights()).isEqualTo(RankingWeights.STIFFNESS_FIRST);
    desk.weigh(new RankingWeights(0, 0, 0, 1));
    assertThat(view().weights().inWords()).isEqualTo("spare 100 %");
    assertThat(view().said()).isEmpty();
  }

  @Test
  void allOrdersAtOnceStandBesideFirstComeFirstServed() {
    assertThat(view().allOrders()).isNull();
    desk.allOrders();
    AllOrders all = view().allOrders();
    assertThat(all.lines()).extracting(AllOrders.Line::order).containsExactly("R-0007", "R-0008");
    assertThat(all.lines())
        .extracting(line -> line.atOnce().tag())
        .containsExactlyInAnyOrder(ChooseWorkshop.BEST, ChooseWorkshop.SECOND);
    assertThat(all.lines().get(0).inTurn().tag()).isEqualTo(ChooseWorkshop.BEST);
    assertThat(all.sumAtOnce())
        .isCloseTo(
            view().serving().get(0).chance() + view().serving().get(1).chance(), within(1e-12));
    desk.promise(ChooseWorkshop.BEST, ChooseWorkshop.ORDER);
    assertThat(view().allOrders()).isNull(); // another pairing by now
  }

  @Test
  void oneUndoTakesTheLastActionBackWhateverItWas() throws Exception {
    desk.promise(ChooseWorkshop.BEST, ChooseWorkshop.ORDER);
    workshop.notes().add(workshop.blanks().require(ChooseWorkshop.BEST), "rings");
    desk.undo();
    assertThat(view().said()).isEqualTo("Taken back: noted on 25-002.");
    assertThat(view().order().promisedTag()).isEqualTo(ChooseWorkshop.BEST);
    desk.undo();
    assertThat(view().said()).isEqualTo("Taken back: promised 25-002 to R-0007.");
    assertThat(view().order().promisedTag()).isNull();
  }

  @Test
  void notesAndBudgetAreSeenClosely() throws Exception {
    workshop.notes().add(workshop.blanks().require(ChooseWorkshop.BEST), "a dark fleck");
    workshop.notes().add(workshop.blanks().require(ChooseWorkshop.BEST), "rings like a bell");
    desk.lookAt(List.of(ChooseWorkshop.BEST));
    ChooseView.Closely look = view().closely(ChooseWorkshop.BEST).orElseThrow();
    assertThat(look.notes()).hasSize(2);
    assertThat(look.notes().get(0)).endsWith("rings like a bell");
    assertThat(look.budget()).isNotEmpty();
    assertThat(look.budget().get(0).amount())
        .isGreaterThanOrEqualTo(look.budget().get(look.budget().size() - 1).amount());
    assertThat(look.setUp()).isEqualTo("supports 100 and 1100, load 600 mm");
  }

  @Test
  void whatDriesForLongStandsApartAndSaysHowItLoses() throws Exception {
    Blank best = workshop.blanks().require(ChooseWorkshop.BEST);
    String document = workshop.blanks().caliperNow(best).document();
    SheetReader reader = new SheetReader(SpeciesTable.published());
    double massG = reader.read(document).shaft().massG();
    later(7);
    String weighed = document.replaceFirst("\"massG\":[0-9.]+", "\"massG\":" + (massG - 3));
    workshop.blanks().addCaliperEntry(best, reader.read(weighed), "weighed");
    desk.refresh();
    assertThat(serving()).containsExactly(ChooseWorkshop.SECOND);
    assertThat(view().cannot())
        .anySatisfy(
            row -> {
              assertThat(row.tag()).isEqualTo(ChooseWorkshop.BEST);
              assertThat(row.reason()).isEqualTo("still drying: loses 3.0 g a week");
            });
    workshop.grains().add(best, new Grain(9.0, Grain.RunOut.SLIGHT, null));
    later(7);
    workshop.blanks().addCaliperEntry(best, reader.read(weighed), "weighed");
    desk.refresh();
    assertThat(serving()).first().isEqualTo(ChooseWorkshop.BEST);
    assertThat(view().serving().get(0).seen().seasoning()).isEqualTo("settled");
    assertThat(view().serving().get(0).seen().grain()).isEqualTo("9, slight");
  }
}
