package sagwright.drawing;

import java.util.List;

/**
 * What the load–deflection plot shows.
 *
 * @param runs drawn in this order, the last on top
 * @param line null before there is one
 * @param letOffN the load at which to let off, NaN for none
 * @param greatestMm the deflection that the plot must have room for
 * @param greatestN the load that it must have room for
 */
public record LoadDeflectionScene(
    List<PlottedRun> runs, FittedLine line, double letOffN, double greatestMm, double greatestN) {
  public LoadDeflectionScene {
    runs = List.copyOf(runs);
  }
}
