package sagwright.drawing;

/**
 * How a hand guesses.
 *
 * @param offPercent guess after guess, oldest first: above 0 where it was too stiff
 * @param withinPercent the bound that nine of the last ten keep; NaN for too few
 * @param lastOf how many of the last that bound is of
 */
public record HandChartScene(
    double[] offPercent, double withinPercent, int lastOf, String firstDay, String lastDay) {}
