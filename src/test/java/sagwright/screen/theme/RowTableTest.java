package sagwright.screen.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sagwright.screen.theme.RowTable.Column;

class RowTableTest {
  @BeforeEach
  void lettered() {
    Theme.LIGHT.install();
  }

  @Test
  void columnsAreAsWideAsTheyShouldBeBeforeAnythingIsZoomed() {
    RowTable<String> table =
        new RowTable<>(
            "table",
            List.of(
                Column.words("species", 132, row -> row),
                Column.figures("mass, g", 64, 0, row -> 405.0)));
    assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(132);
    assertThat(table.getColumnModel().getColumn(1).getPreferredWidth()).isEqualTo(64);
    table.zoomTo(1.5);
    assertThat(table.getColumnModel().getColumn(0).getPreferredWidth()).isEqualTo(198);
  }
}
