package sagwright.screen.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sagwright.drawing.FittedLine;

class LiveLineTest {
  private static final double TARGET_N = 20;

  /** Up to a load and down again by 3 N; 3 N/mm, 0.2 mm of seating below 1 N. */
  private static double[][] run(double toN) {
    double[] up = IntStream.rangeClosed(0, (int) (toN * 10)).mapToDouble(i -> i / 10.0).toArray();
    double[] n = Arrays.copyOf(up, up.length + 30);
    for (int i = 0; i < 30; i++) {
      n[up.length + i] = toN - i / 10.0;
    }
    double[] mm = Arrays.stream(n).map(x -> x / 3 + 0.2 * Math.min(1, x)).toArray();
    return new double[][] {mm, n};
  }

  @Test
  void followsTheLoadingBranchAboveTheSeating() {
    double[][] run = run(12);
    FittedLine line = LiveLine.of(run[0], run[1], TARGET_N);
    assertEquals(3, line.stiffnessNPerMm(), 1e-9);
    assertEquals(-0.6, line.loadAtZeroDeflectionN(), 1e-9);
    assertEquals(2.4, line.windowFromN(), 1e-9);
    assertEquals(12, line.windowToN(), 1e-9);
  }

  @Test
  void isNotDrawnWhileThereIsLittleButSeating() {
    double[][] run = run(5);
    assertNull(LiveLine.of(run[0], run[1], TARGET_N));
    assertNull(LiveLine.of(new double[0], new double[0], TARGET_N));
  }
}
