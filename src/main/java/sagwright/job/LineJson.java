package sagwright.job;

import sagwright.bench.LineStatistics;
import sagwright.sheet.JsonLine;

/** What became of a run's lines, as answers and records have it. */
final class LineJson {
  private LineJson() {}

  static JsonLine of(LineStatistics line) {
    return new JsonLine()
        .put("readings", line.readings())
        .put("refused", line.refused())
        .put("gaps", line.gaps())
        .put("missing", line.missing());
  }
}
