package sagwright.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import sagwright.beam.SetUp;

class AskPlacesTest {
  private static final SetUp BUTT = AskPlaces.AT_FIRST.butt();

  @Test
  void aSetUpThatLiesOnTheShaftStays() {
    assertEquals(BUTT, AskPlaces.on(1473, BUTT));
    assertEquals(BUTT, AskPlaces.on(1450, BUTT));
  }

  @Test
  void oneThatRunsPastTheButtMovesAsAWholeByWholeMillimetres() {
    assertEquals(new SetUp(601, 1351, 976, 976, 0), AskPlaces.on(1371.6, BUTT));
  }

  @Test
  void oneThatIsLongerThanTheShaftStaysAndIsRefusedByTheOrdersOwnRules() {
    assertEquals(BUTT, AskPlaces.on(700, BUTT));
  }
}
