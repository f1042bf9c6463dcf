package sagwright.screen.rack;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.caciocavallosilano.cacio.ctc.junit.CacioTest;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sagwright.screen.ShopUnits;
import sagwright.screen.theme.Theme;

/** The list of blanks as the window treats it. */
@CacioTest
@Tag("window")
class RackListTest {
  @AfterEach
  void wearLight() {
    GuiActionRunner.execute(Theme.LIGHT::install);
  }

  @Test
  void aListThatNoBlankHasBroughtIntoViewYetChangesItsThemeToo() {
    GuiActionRunner.execute(
        () -> {
          Theme.LIGHT.install();
          RackList list = new RackList(ShopUnits.METRIC, row -> {});
          list.show(List.of());
          Theme.DARK.install();
          SwingUtilities.updateComponentTreeUI(list);
          assertThat(tableIn(list).getBackground().getRGB())
              .isEqualTo(Theme.DARK.palette().paper().getRGB());
          return null;
        });
  }

  private static JTable tableIn(Container part) {
    for (Component child : part.getComponents()) {
      if (child instanceof JTable table) {
        return table;
      }
      JTable deeper = child instanceof Container inner ? tableIn(inner) : null;
      if (deeper != null) {
        return deeper;
      }
    }
    return null;
  }
}
