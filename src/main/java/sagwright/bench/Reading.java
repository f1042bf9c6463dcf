package sagwright.bench;

/**
 * One reading as it stood on the wire (docs/contract.md, section 6).
 *
 * @param seq 0 … 65535 and round again
 * @param timeMicros the head's own clock, 0 … 4294967295 and round again
 * @param loadCounts converter counts, −8388608 … 8388607; null where the converter gave none
 * @param gaugeSteps null where the gauge gave no new reading
 * @param flags the bits below
 */
public record Reading(int seq, long timeMicros, Integer loadCounts, Long gaugeSteps, int flags)
    implements LineOutcome {
  public static final int LOAD_AT_END_STOP = 0x01;
  public static final int GAUGE_MISSING = 0x02;
  public static final int LOAD_MISSING = 0x04;
  public static final int HEAD_DROPPED = 0x08;

  /** {@code seq} runs through this many values, then round again. */
  public static final int SEQ_VALUES = 1 << 16;

  /** {@code timeMicros} runs through this many values, then round again. */
  public static final long TIME_VALUES = 1L << 32;

  public static final int LEAST_COUNTS = -(1 << 23);
  public static final int GREATEST_COUNTS = (1 << 23) - 1;

  /** Whether the load may be used: it is there, and neither at its end stop nor flagged missing. */
  public boolean isLoadUsable() {
    return loadCounts != null && (flags & (LOAD_AT_END_STOP | LOAD_MISSING)) == 0;
  }

  /** Whether the gauge may be used: it is there and not flagged missing or silent. */
  public boolean isGaugeUsable() {
    return gaugeSteps != null && (flags & GAUGE_MISSING) == 0;
  }

  public boolean has(int flag) {
    return (flags & flag) != 0;
  }
}
