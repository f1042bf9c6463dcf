package sagwright.workshop;

import sagwright.bench.LineStatistics;

/**
 * What a run has left.
 *
 * @param ending how it ended, in words
 * @param document the whole sheet, readings included
 * @param line what became of the lines
 * @param setAsideWhy null where it is kept
 */
public record RunClosing(
    String ending, String document, LineStatistics line, RunOutcome outcome, String setAsideWhy) {}
