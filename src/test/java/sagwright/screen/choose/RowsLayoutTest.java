package sagwright.screen.choose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowsLayoutTest {
  private static final double HEIGHT = 430;

  @ParameterizedTest
  @CsvSource({"7, 5", "0, 3", "3, 0", "1, 1", "40, 2", "2, 60", "3671, 6337", "9, 0"})
  void theRowWithTheFocusIsSeenAndNothingOverlaps(int serving, int cannot) {
    for (int focus = 0; focus < serving + cannot; focus += focus < 80 ? 1 : 397) {
      RowsLayout rows = RowsLayout.of(serving, cannot, focus, HEIGHT);
      double centre;
      if (focus < serving) {
        assertThat(focus).isBetween(rows.first(), rows.first() + rows.shown() - 1);
        centre = rows.centreOf(focus);
      } else {
        int own = focus - serving;
        assertThat(own).isBetween(rows.firstCannot(), rows.firstCannot() + rows.shownCannot() - 1);
        centre = rows.centreOfCannot(own);
      }
      assertThat(rows.rowAt(centre, serving)).isEqualTo(focus);
      assertThat(centre).isLessThan(HEIGHT);
      if (cannot > 0) {
        assertThat(rows.servingEnd()).isLessThan(rows.headingPx());
        int last = rows.firstCannot() + rows.shownCannot() - 1;
        assertThat(rows.centreOfCannot(last)).isLessThan(HEIGHT - 10);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"7, 3", "1, 1", "9, 1"})
  void whatHasRoomIsSeenWhole(int serving, int cannot) {
    RowsLayout rows = RowsLayout.of(serving, cannot, 0, HEIGHT + 40);
    assertThat(rows.shown()).isEqualTo(serving);
    assertThat(rows.shownCannot()).isEqualTo(cannot);
  }

  @ParameterizedTest
  @CsvSource({"0, 3", "2, 0", "0, 0"})
  void aListThatHasNoRoomYetShowsNoRowThatIsNotThere(int serving, int cannot) {
    RowsLayout rows = RowsLayout.of(serving, cannot, 0, 0);
    assertThat(rows.shown()).isLessThanOrEqualTo(serving);
    assertThat(rows.shownCannot()).isLessThanOrEqualTo(cannot);
  }
}
