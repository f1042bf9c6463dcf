package sagwright.workshop;

import java.util.List;

/**
 * What a grade rests on. None of it ever changes, so that the grade can be worked out again.
 *
 * @param runIds the runs that gave the modulus
 * @param sureness the least chance at which a grade said "meets"
 */
public record GradeBasis(
    long orderVersionId, long caliperEntryId, List<Long> runIds, double sureness) {
  public GradeBasis {
    runIds = List.copyOf(runIds);
  }
}
