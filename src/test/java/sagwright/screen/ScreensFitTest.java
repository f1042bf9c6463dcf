package sagwright.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sagwright.screen.theme.Theme;
import sagwright.screen.theme.UnderlinedField;

/** Every screen at both sizes: nothing clipped, nothing too small to read or to touch. */
class ScreensFitTest {
  /** Common practice, no source. */
  private static final int LEAST_TEXT_PX = 14;

  /** WCAG 2.2, success criterion 2.5.5: 44 by 44. */
  private static final int LEAST_TOUCH_PX = 44;

  static Stream<Arguments> screens() throws Exception {
    SwingUtilities.invokeAndWait(Theme.LIGHT::install);
    return Pictures.shells().keySet().stream()
        .flatMap(name -> Arrays.stream(Pictures.SIZES).map(size -> Arguments.of(name, size)));
  }

  @ParameterizedTest
  @MethodSource("screens")
  void everyTextIsWholeAndEveryTargetLargeEnough(String name, int[] size) throws Exception {
    List<String> faults = new ArrayList<>();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.LIGHT.install();
          look(Pictures.laidOut(Pictures.shells().get(name), size), faults);
        });
    assertThat(faults).isEmpty();
  }

  private static void look(Component part, List<String> faults) {
    if (!part.isVisible() || part instanceof JScrollBar) {
      return;
    }
    if (part instanceof JLabel label && !label.getText().isEmpty()) {
      if (label.getFont().getSize2D() < LEAST_TEXT_PX) {
        faults.add("too small: " + label.getText());
      }
      if (label.getWidth() < label.getPreferredSize().width
          || label.getHeight() < label.getPreferredSize().height) {
        faults.add("clipped: " + label.getText());
      }
    }
    boolean target =
        part instanceof AbstractButton || part instanceof JTextField || part instanceof JComboBox;
    boolean inCombo = part.getParent() instanceof JComboBox;
    if (target && !inCombo && !(part instanceof UnderlinedField)) {
      if (part.getHeight() < LEAST_TOUCH_PX) {
        faults.add("too low to touch: " + part.getName() + ", " + part.getHeight());
      }
      if (part.getWidth() < part.getMinimumSize().width) {
        faults.add("too narrow: " + part.getName());
      }
    }
    if (part instanceof Container container && !(part instanceof JComboBox)) {
      for (Component child : container.getComponents()) {
        look(child, faults);
      }
    }
  }
}
