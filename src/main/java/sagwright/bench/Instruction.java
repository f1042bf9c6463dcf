package sagwright.bench;

/** What the one at the bench is to do next. */
public enum Instruction {
  HOLD_STILL("hold still"),
  LOAD_SLOWLY("load slowly"),
  LET_OFF("enough, let off"),
  DONE("done");

  private final String inWords;

  Instruction(String inWords) {
    this.inWords = inWords;
  }

  public String inWords() {
    return inWords;
  }
}
