package sagwright.screen.bench;

import sagwright.bench.Instruction;

/** Where a test stands, and the few syllables that lead through it. */
public enum Phase {
  NO_BLANK("lay a blank", "type its tag above, then Enter; F2 shows all"),
  NO_HEAD("no bench head", "plug it in, or choose its port: F9"),
  READY("ready", "Space begins the test"),
  HOLD_STILL(Instruction.HOLD_STILL, "taking the zero"),
  LOAD_SLOWLY(Instruction.LOAD_SLOWLY, ""),
  LET_OFF(Instruction.LET_OFF, "as slowly as you loaded"),
  TOO_MUCH("stop, let off", "near what this shaft may take"),
  DONE(Instruction.DONE, ""),
  /** The next run of a series waits for the shaft to be turned. */
  TURN("turn the shaft", ""),
  BROKEN_OFF("broken off", "what was read is kept, set aside; Space tests again"),
  LINE_LOST("line lost", "what was read is kept; Space tests again"),
  NO_ANSWER("no answer", "");

  private final String instruction;
  private final String detail;

  Phase(Instruction instruction, String detail) {
    this(instruction.inWords(), detail);
  }

  Phase(String instruction, String detail) {
    this.instruction = instruction;
    this.detail = detail;
  }

  public String instruction() {
    return instruction;
  }

  /** What stands under the instruction unless the view says something better. */
  public String detail() {
    return detail;
  }

  /** Whether a test runs. */
  public boolean isRunning() {
    return this == HOLD_STILL || this == LOAD_SLOWLY || this == LET_OFF || this == TOO_MUCH;
  }

  /** Whether a test can begin. */
  public boolean canBegin() {
    return this != NO_BLANK && this != NO_HEAD && !isRunning();
  }
}
