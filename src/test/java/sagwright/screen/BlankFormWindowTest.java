package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.screen.rack.BlankEntry;
import sagwright.screen.rack.RackScreen;

/** What the form of a blank does with what cannot be, or can hardly be. */
@CacioTest
@Tag("window")
class BlankFormWindowTest {
  private static final String NEXT = "Enter goes on.";

  private final List<BlankEntry> entered = new CopyOnWriteArrayList<>();
  private WindowUnderTest window;

  /** Refuses by the sheet's keys, as the workshop does. */
  private final class Refusing extends ShopExample.IdleRack {
    @Override
    public void enter(BlankEntry blank, Reply reply) {
      entered.add(blank);
      reply.refused("stations[1].depthMm: carried straight on runs out to 0 before the end");
    }
  }

  @BeforeEach
  void open() {
    window =
        WindowUnderTest.openPage(
            () -> new RackScreen(new Mailbox<>(ShopExample.rack()), new Refusing()));
    window.waitForFocusOn("rack.filter");
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.waitForFocusOn("blank.tag");
  }

  @AfterEach
  void close() {
    window.close();
  }

  private void keep() {
    window.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
  }

  /** Puts a text into a field in place of what stands there. */
  private void typeInto(String field, String text) {
    window.tabTo(field);
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type(text);
  }

  private void stations(String... figures) {
    window.tabTo("blank.pitch");
    window.press(KeyEvent.VK_ENTER);
    for (String figure : figures) {
      window.type(figure);
      window.press(KeyEvent.VK_ENTER);
    }
  }

  private void waitForFoot(String start) {
    window.waitUntil(
        "the foot says " + start + " …", () -> window.saidBy("foot").startsWith(start));
  }

  @Test
  void aComplaintLeadsToItsFieldAndGoesOnceThatIsPutRight() {
    typeInto("blank.tag", "25-015");
    typeInto("blank.mass", "xx");
    stations("0", "12.1", "", "1490", "29.6", "");
    keep();
    waitForFoot("mass: xx is no mass");
    window.waitForPicked("blank.mass");
    window.type("372"); // over what is picked
    assertThat(window.textOf("blank.mass")).isEqualTo("372");
    waitForFoot(NEXT);
    assertThat(entered).isEmpty();
  }

  @Test
  void aComplaintOfAStationLeadsToItsPlaceOrItsDiameter() {
    typeInto("blank.tag", "25-015");
    stations("0", "12.1", "", "149o", "29.6", "");
    keep();
    waitForFoot("station 2, x: 149o");
    window.waitForPicked("stations.2.1");
    window.type("1490");
    keep();
    waitForFoot("station 2, depth: carried straight on runs out");
    window.waitForPicked("stations.2.2");
  }

  @Test
  void whatCanHardlyBeIsAskedOneByOneWithItsFieldAndKeptIfTheMakerSaysSo() {
    typeInto("blank.tag", "25-015");
    typeInto("blank.mass", "372");
    stations("0", "12.1", "", "1490", "3", "");
    keep();
    waitForFoot("Misread? depth 3 at 1490 mm: cues and their squares have 6 to 80 mm.  Ctrl Enter");
    window.waitForPicked("stations.2.2");
    keep();
    waitForFoot("Misread? mass and diameters make this wood 4974 kg/m³: woods have 300 to 1100.");
    window.waitForPicked("blank.mass");
    assertThat(entered).isEmpty();
    keep();
    window.waitUntil("it is kept as it is", () -> !entered.isEmpty());
    assertThat(entered.get(0).stations().get(1).depthMm()).isEqualTo(3);
  }

  @Test
  void aDiameterThatIsPutRightIsAskedAboutNoMore() {
    typeInto("blank.tag", "25-015");
    typeInto("blank.mass", "372");
    stations("0", "12.1", "", "1490", "3", "");
    keep();
    window.waitForPicked("stations.2.2");
    window.type("30"); // over what is picked
    waitForFoot(NEXT);
    keep();
    window.waitUntil("it is kept", () -> !entered.isEmpty());
    assertThat(entered.get(0).stations().get(1).depthMm()).isEqualTo(30);
  }

  @Test
  void aWoodThatIsNotKnownIsSaidAtOnceAndItsNearNamesAreTwoKeysAway() {
    window.press(KeyEvent.VK_ENTER); // from the tag to the wood
    window.type("ash");
    waitForFoot("ash is not in the table of woods.  Down there offers European ash, White ash.");
    assertThat(window.saidBy("foot")).contains("15 MPa at the most");
    window.press(KeyEvent.VK_DOWN); // opens the list
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    waitForFoot(NEXT);
    typeInto("blank.length", "1490");
    stations("0", "12.1", "", "1490", "30", "");
    keep();
    window.waitUntil("it is kept", () -> !entered.isEmpty());
    assertThat(entered.get(0).species()).isEqualTo("White ash");
  }

  @Test
  void aWoodThatIsNotKnownIsKeptWithoutAQuestion() {
    typeInto("blank.tag", "25-015");
    window.press(KeyEvent.VK_ENTER);
    window.type("pear");
    waitForFoot("pear is not in the table of woods.");
    stations("0", "12.1", "", "1490", "30", "");
    keep();
    window.waitUntil("it is kept", () -> !entered.isEmpty());
    assertThat(entered.get(0).species()).isEqualTo("pear");
  }
}
