package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.beam.Station;
import sagwright.finish.Extra;
import sagwright.finish.Ferrule;
import sagwright.grade.Aim;
import sagwright.grade.Ask;
import sagwright.grade.AskPlaces;
import sagwright.grade.Order;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.job.KeepTapers;
import sagwright.screen.orders.OrdersDesk;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.orders.OrdersView;
import sagwright.sheet.OrderReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;
import sagwright.workshop.WorkshopOrder;

/** Orders are taken and changed in a real workshop, by keyboard alone. */
@CacioTest
@Tag("window")
class OrderWindowTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();
  private static final int ENTER = KeyEvent.VK_ENTER;

  /** The contract's example, with what other programs may have put into it. */
  private static final String FOREIGN =
      """
      {"format":"sagwright-order/1","order":"R-0007","species":"European ash",\
      "promisedFor":"2026-06-30","notes":"long reach\\nno badge\\n","x-shelf":[1,{"a":null}],\
      "finish":{"lengthMm":1473.2,"diameterUncertaintyMm":0.0333333333333333,\
      "taper":[{"xMm":0,"diameterMm":9.512345678901},{"xMm":700.25,"diameterMm":18,"x-seen":true},\
      {"xMm":1473.2,"diameterMm":29.0}],"cutFromMm":8.0,\
      "ferrule":{"lengthMm":9.5,"boreMm":8.0,"densityKgM3":8533.3},\
      "splice":{"fromMm":1030.1,"coreHalfAtButtMm":4.0,"densityKgM3":1120,"modulusMPa":15512.34567,\
      "modulusUncertaintyPercent":1.5},\
      "weights":[{"fromMm":1400,"toMm":1450,"diameterMm":12,"densityKgM3":11340,"x-lot":7}],\
      "extras":[{"xMm":1440,"massG":4},{"name":"Joint","xMm":740,"massG":38,"x-thread":"brass"}]},\
      "ask":{"setup":{"supportAMm":100,"supportBMm":1100,"loadMm":600,"gaugeMm":610.5},\
      "stiffnessNPerMm":2.2512345,"tolerancePercent":4.75,"massG":524.466,"massToleranceG":15,\
      "balanceFromButtMm":450},\
      "alsoAsked":[{"setup":{"supportAMm":700,"supportBMm":1450,"loadMm":1075,"gaugeMm":1075},\
      "stiffnessNPerMm":21.5,"tolerancePercent":8},\
      {"setup":{"supportAMm":200,"supportBMm":900,"loadMm":500,"gaugeMm":500},\
      "stiffnessNPerMm":4.125,"tolerancePercent":6.5,"x-why":"long pots"}]}\
      """;

  @TempDir Path folder;
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private Workshop workshop;
  private WindowUnderTest window;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopUnderTest.open(folder);
    bring(InventedBlanks.sheet(Spec.ash("25-002", 12_000)));
    bring(InventedBlanks.sheet(Spec.ash("V-1", 12_500).at("finished cue")));
    bring(FOREIGN);
    Mailbox<OrdersView> mailbox = new Mailbox<>(OrdersDesk.atFirst(ShopUnits.METRIC));
    OrdersDesk desk = new OrdersDesk(workshop, SPECIES, work, mailbox);
    window =
        WindowUnderTest.open(
            () -> {
              Shell shell = new Shell();
              shell.add(new OrdersScreen(mailbox, desk));
              shell.whenOpened("Orders", desk::refresh);
              shell.open("Orders");
              return shell;
            });
    window.waitUntil("the orders are there", () -> !mailbox.newest().cues().isEmpty());
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    WorkshopUnderTest.close(workshop, work);
  }

  private void bring(String document) throws Exception {
    new ImportDocuments(workshop, SPECIES).bring(document, true);
  }

  private void takeNew() {
    window.waitForFocusOn("orders.table");
    window.press(KeyEvent.VK_N);
    window.waitForFocusOn("order.length");
  }

  private void fields(String... texts) {
    for (String text : texts) {
      window.type(text);
      window.press(ENTER);
    }
  }

  private void keep() {
    window.press(ENTER, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("orders.table");
  }

  private Order kept(String number) throws Exception {
    return OrderReader.read(workshop.orders().require(number).document());
  }

  private boolean isKept(String number) {
    try {
      return workshop.orders().find(number).isPresent();
    } catch (WorkshopException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void anOrderIsTakenInTwentyFiveKeystrokesAllTold() throws Exception {
    window.waitForFocusOn("orders.table");
    window.countKeystrokes();
    takeNew();
    fields("58in", "9.5", "29", ""); // no knots
    window.waitForFocusOn("ask.middle");
    window.type("2.1");
    keep();
    assertThat(window.keystrokes()).isLessThanOrEqualTo(25).isGreaterThan(12);
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    Order order = kept("R-0008");
    assertThat(order.ask()).isEqualTo(Ask.ofStiffness(AskPlaces.AT_FIRST.middle(), 2.1, 5));
    assertThat(order.finish().taper().stations())
        .containsExactly(Station.round(0, 9.5), Station.round(1473.2, 29));
  }

  /** What is typed of figures and names is its numbers; all other keys must be 25 at the most. */
  @Test
  void allThatAPlayerAsksIsTakenInTwentyFiveKeystrokesBesideItsNumbers() throws Exception {
    String[] numbers = {
      "147,3 cm",
      "9.5",
      "29",
      "2.1",
      "20.5",
      "18½ oz",
      "15",
      "16in",
      "left-handed",
      "9.5",
      "8",
      "740",
      "38",
      "80",
      "15in",
      "ebony A"
    };
    window.waitForFocusOn("orders.table");
    window.countKeystrokes();
    takeNew();
    fields(numbers[0], numbers[1], numbers[2], "");
    window.waitForFocusOn("ask.middle");
    fields(numbers[3], "");
    window.waitForFocusOn("ask.butt");
    fields(numbers[4], "", numbers[5], numbers[6], numbers[7], "");
    window.waitForFocusOn("caller.who for");
    window.type(numbers[8]);
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.waitForFocusOn("fitting.ferrule");
    fields(numbers[9], numbers[10], "", numbers[11], numbers[12], numbers[13]);
    window.waitForFocusOn("splice.splice");
    fields(numbers[14], numbers[15]);
    keep();
    int besides = window.keystrokes() - String.join("", numbers).length();
    assertThat(besides).isLessThanOrEqualTo(25).isGreaterThan(15);

    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    Order order = kept("R-0008");
    assertThat(order.notes()).isEqualTo("left-handed");
    assertThat(order.finish().lengthMm()).isEqualTo(1473);
    assertThat(order.ask())
        .isEqualTo(
            new Ask(
                AskPlaces.AT_FIRST.middle(),
                2.1,
                5,
                new Aim(524.4661778125, 15.0), // 18.5 × 28.349523125
                new Aim(406.4, null)));
    assertThat(order.alsoAsked())
        .containsExactly(Ask.ofStiffness(AskPlaces.AT_FIRST.butt(), 20.5, 5));
    assertThat(order.finish().ferrule()).isEqualTo(new Ferrule(9.5, 8, 8500));
    assertThat(order.finish().extras()).containsExactly(new Extra("joint", 740, 38));
    assertThat(order.remarks().buttFlatMm()).isEqualTo(80);
    assertThat(order.remarks().spliceWood()).isEqualTo("ebony African");
    assertThat(order.finish().splice().fromMm()).isEqualTo(1473 - 381);
    assertThat(order.finish().splice().modulusMPa()).isEqualTo(17_700); // of the published table
  }

  @Test
  void frontMiddleAndButtAreEachOneKeystrokeWithATheirOwnTolerance() throws Exception {
    takeNew();
    fields("1473", "9.5", "29");
    window.press(KeyEvent.VK_F8);
    window.waitForFocusOn("ask.butt");
    fields("20.5", "8");
    window.press(KeyEvent.VK_F6);
    window.waitForFocusOn("ask.front");
    fields("4.4", "6");
    window.press(KeyEvent.VK_F7);
    window.waitForFocusOn("ask.middle");
    window.type("firm");
    window.waitUntil(
        "each set-up is heard",
        () -> window.saidBy("order.listening").matches("front: .*; middle: .*; butt: .*"));
    keep();
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    Order order = kept("R-0008");
    assertThat(order.ask().stiffnessNPerMm()).isCloseTo(2.575, within(1e-12));
    assertThat(order.ask().tolerancePercent()).isCloseTo(100 * 0.125 / 2.575, within(1e-9));
    assertThat(order.remarks().askedAs(0)).isEqualTo("firm");
    assertThat(order.alsoAsked())
        .containsExactly(
            Ask.ofStiffness(AskPlaces.AT_FIRST.front(), 4.4, 6),
            Ask.ofStiffness(AskPlaces.AT_FIRST.butt(), 20.5, 8));
  }

  /** The visitor's run was made with 12500 MPa; what it shows is reckoned apart from the screen. */
  @Test
  void aTenthFirmerThanAVisitorIsAFigureAtEverySetUp() throws Exception {
    takeNew();
    fields("1473", "9.5", "29");
    window.press(KeyEvent.VK_F7);
    window.waitForFocusOn("ask.middle");
    for (int i = 0; i < 6; i++) {
      window.press(KeyEvent.VK_DOWN); // through the five words to the first cue
    }
    window.press(KeyEvent.VK_F8);
    window.waitForFocusOn("ask.butt");
    window.type("a tenth firmer than V-1");
    keep();
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    Order order = kept("R-0008");
    Spec visitor = Spec.ash("V-1", 12_500);
    assertThat(order.ask().stiffnessNPerMm())
        .isCloseTo(
            InventedBlanks.stiffnessNPerMm(visitor, AskPlaces.AT_FIRST.middle()), within(6e-5));
    assertThat(order.alsoAsked().get(0).stiffnessNPerMm())
        .isCloseTo(
            1.1 * InventedBlanks.stiffnessNPerMm(visitor, AskPlaces.AT_FIRST.butt()), within(6e-5));
    assertThat(order.remarks().askedAs()).containsExactly("as V-1", "as V-1 + 10 %");
  }

  @Test
  void anOrderThatIsOpenedAndKeptAgainSaysWhatItSaidToTheLastDigit() throws Exception {
    Order before = kept("R-0007");
    WorkshopOrder stored = workshop.orders().require("R-0007");
    window.waitForFocusOn("orders.table");
    window.press(ENTER);
    window.waitForFocusOn("order.length");
    keep();
    window.waitUntil("a newer version is stored", () -> versionOf("R-0007") > stored.versionId());
    Order after = kept("R-0007");
    assertThat(after.finish().taper().stations()).isEqualTo(before.finish().taper().stations());
    assertThat(after.finish().diameterUncertaintyMm())
        .isEqualTo(before.finish().diameterUncertaintyMm());
    assertThat(after.finish().cutFromMm()).isEqualTo(before.finish().cutFromMm());
    assertThat(after.finish().ferrule()).isEqualTo(before.finish().ferrule());
    assertThat(after.finish().splice()).isEqualTo(before.finish().splice());
    assertThat(after.finish().weights()).isEqualTo(before.finish().weights());
    assertThat(after.finish().extras())
        .containsExactlyInAnyOrderElementsOf(before.finish().extras());
    assertThat(after.asks()).isEqualTo(before.asks());
    assertThat(after.notes()).isEqualTo(before.notes());
    assertThat(after.promisedFor()).isEqualTo(before.promisedFor());
    assertThat(after.species()).isEqualTo(before.species());
    assertThat(workshop.orders().require("R-0007").document())
        .contains("\"x-shelf\":[1,{\"a\":null}]")
        .contains("\"x-seen\":true")
        .contains("\"x-lot\":7")
        .contains("\"x-thread\":\"brass\"")
        .contains("\"x-why\":\"long pots\"");
  }

  private long versionOf(String number) {
    try {
      return workshop.orders().require(number).versionId();
    } catch (WorkshopException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aPromiseAndItsWoodAreTypedAsPeopleWriteThem() throws Exception {
    takeNew();
    fields("58 in", "9,5", "29", "", "2.1", "");
    window.tabTo("caller.who for");
    fields("long reach", "european a", "30 jun 2027");
    keep();
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    assertThat(kept("R-0008").species()).isEqualTo("European ash");
    assertThat(kept("R-0008").promisedFor()).isEqualTo(LocalDate.of(2027, 6, 30));
  }

  @Test
  void whatCannotBeIsSaidByTheNameOfItsFieldAndNothingIsLost() {
    takeNew();
    fields("1473", "9.5", "29", "", "2.1");
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.waitForFocusOn("fitting.ferrule");
    fields("9.5", "9.6");
    window.press(ENTER, KeyEvent.VK_CONTROL);
    window.waitUntil(
        "the bore is refused",
        () -> window.saidBy("foot").startsWith("bore: 9.6 is wider than the tip"));
    assertThat(isKept("R-0008")).isFalse();
    window.press(KeyEvent.VK_PAGE_UP);
    window.waitForFocusOn("order.length");
    assertThat(window.textOf("order.length")).isEqualTo("1473");
  }

  /** From the last leaf, so that the way to the field leads over another one. */
  private void keepFromTheLastLeaf() {
    while (!window.isSeen("setup.front")) {
      window.press(KeyEvent.VK_PAGE_DOWN);
    }
    window.press(ENTER, KeyEvent.VK_CONTROL);
  }

  private void waitForComplaint(String start, String field) {
    window.waitUntil("it is said: " + start, () -> window.saidBy("foot").startsWith(start));
    window.waitForPicked(field);
  }

  @Test
  void aComplaintLeadsToItsFieldOnWhicheverLeafAndGoesOnceThatIsPutRight() {
    takeNew();
    fields("1473", "9.5", "2x", "740", "0", "", "2.1");
    keepFromTheLastLeaf();
    waitForComplaint("butt: 2x", "order.butt");
    window.type("29"); // over what is picked
    window.waitUntil(
        "the complaint is gone", () -> window.saidBy("foot").startsWith("Enter goes on."));
    keepFromTheLastLeaf();
    waitForComplaint("knot 1, diameter: must be above 0", "knots.1.2");
    window.type("18");
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.waitForFocusOn("fitting.ferrule");
    window.tabTo("weights.1.1");
    fields("1400", "1300", "12");
    keepFromTheLastLeaf();
    waitForComplaint("weight 1, to: ", "weights.1.2");
    window.type("1450");
    window.tabTo("weights.1.3");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("60");
    keepFromTheLastLeaf();
    waitForComplaint("weight 1, wide: 60", "weights.1.3");
    window.type("12");
    keepFromTheLastLeaf();
    window.waitForFocusOn("orders.table");
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
  }

  @Test
  void anOrderThatWasKeptIsTheOneThatIsMarked() {
    takeNew();
    fields("1473", "9.5", "29", "", "2.1");
    keep();
    window.waitUntil("it is marked", () -> window.markedIn("orders.table").equals("R-0008"));
    window.press(KeyEvent.VK_DOWN);
    window.waitUntil("the other", () -> window.markedIn("orders.table").equals("R-0007"));
  }

  @Test
  void aNumberThatIsTakenIsSaidByItsField() {
    takeNew();
    fields("1473", "9.5", "29", "", "2.1");
    window.tabTo("caller.number");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("r-0007");
    keepFromTheLastLeaf();
    waitForComplaint("number: there is an order r-0007 already", "caller.number");
  }

  @Test
  void whatIsSeldomMadeIsWarnedOfAndTakenAllTheSame() {
    takeNew();
    fields("1000", "14.5", "29");
    window.press(KeyEvent.VK_F6);
    window.waitForFocusOn("ask.front");
    window.type("4.4");
    window.waitUntil(
        "the warnings are said",
        () ->
            window.saidBy("order.warnings").contains("pool rules: no shorter than 1016")
                && window.saidBy("order.warnings").contains("tip no wider than 14 mm"));
    keep();
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
  }

  @Test
  void aTaperIsKeptPickedByItsLetterRenamedDeletedAndTakenBack() throws Exception {
    takeNew();
    fields("1473.2", "9.3", "28.5", "740", "18.2", "");
    window.waitForFocusOn("ask.middle");
    window.press(KeyEvent.VK_PAGE_UP);
    window.waitForFocusOn("setup.front");
    window.tabTo("taper.keep this taper as");
    fields("slim");
    window.waitUntil("the taper is kept", () -> names().equals(List.of("slim")));
    window.press(KeyEvent.VK_ESCAPE);

    takeNew();
    fields("s"); // its letter where the length is asked for
    window.waitForFocusOn("ask.middle");
    window.type("2.1");
    keep();
    window.waitUntil("the order is stored", () -> isKept("R-0008"));
    assertThat(kept("R-0008").finish().taper().stations())
        .containsExactly(
            Station.round(0, 9.3), Station.round(740, 18.2), Station.round(1473.2, 28.5));

    takeNew();
    window.press(KeyEvent.VK_PAGE_UP);
    window.waitForFocusOn("setup.front");
    window.tabTo("tapers");
    window.press(KeyEvent.VK_R);
    window.waitForFocusOn("taper.keep this taper as");
    fields("arrow");
    window.waitUntil("it is renamed", () -> names().equals(List.of("arrow")));
    window.tabTo("tapers");
    window.press(KeyEvent.VK_DELETE);
    window.waitUntil("it is deleted", () -> names().isEmpty());
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.waitUntil("it is taken back", () -> names().equals(List.of("arrow")));
  }

  private List<String> names() {
    try {
      return new KeepTapers(workshop).all().stream().map(KeepTapers.KeptTaper::name).toList();
    } catch (WorkshopException e) {
      throw new AssertionError(e);
    }
  }
}
