package sagwright.drawing;

import sagwright.check.ControlChart;

/**
 * The check rod's chart.
 *
 * @param percent every reading in percent off what the rod's steel says, in the order of time
 * @param from the reading with which the chart begins; those before it are only shown
 * @param chart of the readings from there on, null with too few of them
 * @param firstDay of the first reading, as written under it
 * @param lastDay of the last
 */
public record RodChartScene(
    double[] percent, int from, ControlChart chart, String firstDay, String lastDay) {}
