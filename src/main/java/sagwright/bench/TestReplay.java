package sagwright.bench;

/** Works a run out again from its lines as they came. */
public final class TestReplay {
  private TestReplay() {}

  /**
   * The run that the kept bytes of a test give, as its walk gave it while they came.
   *
   * @param raw the bytes that a {@link LineJournal} was given, one behind the other
   * @param plan the test's own
   * @param ending how it ended, where the lines do not show that themselves
   */
  public static RecordedRun of(byte[] raw, TestPlan plan, Ending ending) {
    TestWalk walk = new TestWalk(plan);
    WireReader.fromLineStart(walk).accept(raw, raw.length);
    walk.end(ending);
    return walk.run();
  }
}
