package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sagwright.job.GradeBlank;
import sagwright.job.ImportDocuments;
import sagwright.job.InventedBlanks;
import sagwright.job.InventedBlanks.Spec;
import sagwright.screen.orders.OrdersDesk;
import sagwright.screen.orders.OrdersScreen;
import sagwright.screen.orders.OrdersView;
import sagwright.sheet.OrderReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** An order that is written down is planned in the blanks of a real workshop, by keyboard alone. */
@CacioTest
@Tag("window")
class FinishPlanWindowTest {
  private static final SpeciesTable SPECIES = SpeciesTable.published();

  @TempDir Path folder;
  private final ExecutorService work = Executors.newSingleThreadExecutor();
  private Workshop workshop;
  private WindowUnderTest window;

  @BeforeEach
  void open() throws Exception {
    workshop = WorkshopUnderTest.open(folder);
    ImportDocuments imports = new ImportDocuments(workshop, SPECIES);
    imports.bring(InventedBlanks.sheet(Spec.ash("25-001", 11_500)), false);
    imports.bring(InventedBlanks.sheet(Spec.ash("25-002", 12_000)), false);
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
  }

  @AfterEach
  void close() throws Exception {
    window.close();
    WorkshopUnderTest.close(workshop, work);
  }

  private void field(String text) {
    window.type(text);
    window.press(KeyEvent.VK_ENTER);
  }

  private String plan() {
    return window.saidBy("order.plan");
  }

  private void waitUntilPlanSays(String words) {
    window.waitUntil("the plan says " + words, () -> plan().contains(words));
  }

  private void ctrl(int key) {
    window.press(key, KeyEvent.VK_CONTROL);
  }

  private boolean isKept() {
    try {
      return workshop.orders().find("R-0001").isPresent();
    } catch (WorkshopException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void whatIsTypedIsPlannedInTheBestBlankAndItsLeadIsTakenByOneKey() throws Exception {
    ctrl(KeyEvent.VK_N);
    window.waitForFocusOn("order.length");
    field("1473");
    field("9.5");
    field("29");
    field(""); // no knots
    waitUntilPlanSays("stiffness"); // is wanting
    field("2.2");
    waitUntilPlanSays("in 25-002: best of 2");
    assertThat(plan()).contains("0.1 mm thicker").contains("Ask a weight and a balance");

    ctrl(KeyEvent.VK_B);
    waitUntilPlanSays("in 25-001: picked, 2 of 2");
    ctrl(KeyEvent.VK_B);
    waitUntilPlanSays("in 25-002: picked, 1 of 2");

    window.tabTo("ask.weight");
    field("450");
    field("");
    field("420");
    waitUntilPlanSays("brings the weight and the balance");
    String bare = plan();
    ctrl(KeyEvent.VK_L);
    waitUntilPlanSays("weight 450 g; balance 420 mm");
    ctrl(KeyEvent.VK_Z);
    window.waitUntil("the lead is taken back", () -> plan().equals(bare));
    ctrl(KeyEvent.VK_L);
    waitUntilPlanSays("weight 450 g; balance 420 mm");

    String planned = plan();
    ctrl(KeyEvent.VK_ENTER);
    window.waitUntil("the order is kept", this::isKept);
    var kept = OrderReader.read(workshop.orders().require("R-0001").document());
    assertThat(kept.finish().weights()).hasSize(1);
    var graded = new GradeBlank(workshop, SPECIES).grade("25-002", "R-0001").graded();
    assertThat(graded.forecast().massG()).isCloseTo(450, within(0.5));
    assertThat(graded.forecast().balanceFromButtMm()).isCloseTo(420, within(0.5));
    Matcher said = Pattern.compile("finished cue (\\S+) ±").matcher(planned);
    assertThat(said.find()).isTrue();
    assertThat(Double.parseDouble(said.group(1)))
        .isCloseTo(graded.grade().stiffnessNPerMm().value(), within(6e-3));
    assertThat(List.of("meets", "softer", "stiffer", "undecided"))
        .filteredOn(planned::contains)
        .contains(graded.grade().verdict().word());
  }
}
