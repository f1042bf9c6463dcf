package sagwright.bench;

/** Opens a line to one bench head, anew at each call, so that a lost line can be found again. */
public interface LineOpener {
  /** What a bench head sends at unless it is set otherwise (docs/contract.md, section 6). */
  int ORDINARY_BAUD = 115_200;

  /** What would be opened, in words that a maker knows it by. */
  String description();

  /**
   * @throws LineNotOpenedException where it cannot be, with what to do about it
   */
  ByteLine open() throws LineNotOpenedException;
}
