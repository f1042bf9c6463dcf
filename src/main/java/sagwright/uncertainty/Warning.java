package sagwright.uncertainty;

/**
 * Something that an answer's reader should know. Each room has its own kinds as records that hold
 * values; the words are made here at the edge, in metric units, one sentence, without a full stop.
 */
public interface Warning {
  /** The warning as one line for people. */
  String inWords();
}
