package sagwright.bench;

/** How the line to the bench head stands. */
public enum LinkState {
  /** It is being opened. */
  OPENING,
  /** It could not be opened; what to do is said, and it is tried again. */
  NOT_OPENED,
  /** It is open, and no reading has come yet. */
  ASKING,
  /** Readings come. */
  READING,
  /** It was there and is gone; it is looked for again. */
  LOST,
  CLOSED
}
