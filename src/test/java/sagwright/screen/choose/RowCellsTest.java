package sagwright.screen.choose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sagwright.screen.choose.ChooseView.Row;
import sagwright.uncertainty.Estimate;

class RowCellsTest {
  private static Row withModulus(double mPa, double standardUncertaintyMPa) {
    Row row = ChooseExample.choosing().serving().get(0);
    return new Row(
        row.tag(),
        row.stiffnessNPerMm(),
        row.verdict(),
        row.chance(),
        new Estimate(mPa, standardUncertaintyMPa),
        row.cut(),
        row.mass(),
        row.balance(),
        row.blank(),
        row.stage(),
        row.seen(),
        row.warnings(),
        row.reason());
  }

  @Test
  void moduliStandWithOneNumberOfDecimalsThatEachMayHave() {
    List<Row> rows =
        List.of(
            withModulus(11_180, 110), // ± 0.22 GPa: two decimals
            withModulus(11_514, 30), // ± 0.059: three
            withModulus(12_000, 250)); // ± 0.49: two
    assertThat(rows.stream().map(RowCells.modulus(rows)).toList())
        .containsExactly("11.18", "11.51", "12.00");
    assertThat(RowCells.modulus(List.of(withModulus(9_960, 700))).apply(rows.get(0)))
        .isEqualTo("11.2"); // ± 1.4
  }
}
