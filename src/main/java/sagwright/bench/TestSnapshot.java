package sagwright.bench;

import java.util.Set;

/**
 * A test as it stands: immutable, for any thread.
 *
 * @param limits how far this test is to load
 * @param loadN the newest load, reckoned from the zero; NaN before there is one
 * @param deflectionMm the newest deflection, likewise
 * @param greatestLoadN so far, single wild readings left out; 0 before any was put on
 * @param warnings those that hold now
 * @param line what became of the lines so far
 * @param trace the samples so far; empty until the zero is taken
 * @param elapsedS the head's time since the test's first reading
 */
public record TestSnapshot(
    TestPhase phase,
    Instruction instruction,
    LoadLimits limits,
    double loadN,
    double deflectionMm,
    double greatestLoadN,
    Set<BenchWarning> warnings,
    LineStatistics line,
    RunTrace trace,
    double elapsedS) {
  public TestSnapshot {
    warnings = Set.copyOf(warnings);
  }
}
