package sagwright.bench;

/** Where a test on the bench stands. */
public enum TestPhase {
  /** The load has not been at rest for long enough yet: there is no zero. */
  WAITING_FOR_REST(Instruction.HOLD_STILL),
  /** The zero is taken; nothing is on yet. */
  AT_REST(Instruction.LOAD_SLOWLY),
  LOADING(Instruction.LOAD_SLOWLY),
  /** The load has come down from its peak. */
  LETTING_OFF(Instruction.LET_OFF),
  DONE(Instruction.DONE);

  private final Instruction instruction;

  TestPhase(Instruction instruction) {
    this.instruction = instruction;
  }

  Instruction instruction() {
    return instruction;
  }
}
