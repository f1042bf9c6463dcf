package sagwright.screen.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.screen.choose.ChooseView.Row;

class PicksTest {
  private final List<Row> serving = ChooseExample.choosing().serving();

  @Test
  void theBestTwoAreComparedUntilSomeArePicked() {
    assertThat(Picks.NONE.among(serving)).containsExactly("25-014", "25-031");
    assertThat(Picks.NONE.toggled("24-118").among(serving)).containsExactly("24-118");
  }

  @Test
  void theFirstPickStaysFirstAndAFifthTakesTheFourthsPlace() {
    Picks picks = Picks.NONE;
    for (String tag : List.of("25-007", "25-014", "24-118", "25-022", "25-011")) {
      picks = picks.toggled(tag);
    }
    assertThat(picks.among(serving)).containsExactly("25-007", "25-014", "24-118", "25-011");
  }

  @Test
  void aPickThatMayServeNoMoreIsLetGo() {
    Picks picks = Picks.NONE.toggled("25-040").toggled("25-007");
    assertThat(picks.among(serving)).containsExactly("25-007");
    assertThat(picks.toggled("25-007").toggled("25-040").among(serving))
        .containsExactly("25-014", "25-031");
  }
}
