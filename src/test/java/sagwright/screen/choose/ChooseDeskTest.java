package sagwright.screen.choose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.ChoosingShop;
import sagwright.screen.Mailbox;
import sagwright.screen.ShopUnits;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

class ChooseDeskTest {
  private final Mailbox<ChooseView> mailbox = new Mailbox<>(ChooseView.reading(ShopUnits.METRIC));
  private Workshop workshop;
  private ChooseDesk desk;

  @BeforeEach
  void open(@TempDir Path folder) throws Exception {
    workshop = ChooseWorkshop.create(folder);
    ChoosingShop shop = new ChoosingShop(workshop, SpeciesTable.published());
    desk = new ChooseDesk(shop, Runnable::run, mailbox);
    desk.refresh();
  }

  @AfterEach
  void close() throws WorkshopException {
    workshop.close();
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
}
