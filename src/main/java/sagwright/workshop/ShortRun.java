package sagwright.workshop;

import java.util.function.Supplier;

/**
 * A run that counts, in short.
 *
 * @param evaluationId the newest answer's
 * @param startedMs when it was started, since 1970
 * @param packedAnswer of its newest answer
 */
public record ShortRun(
    long runId, long evaluationId, long startedMs, Supplier<ShortAnswer> packedAnswer) {
  /** Unpacked at each call, on the thread of whoever asks. */
  public ShortAnswer answer() {
    return packedAnswer.get();
  }
}
