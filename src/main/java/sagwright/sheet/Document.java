package sagwright.sheet;

/** What may be brought into a workshop. */
public sealed interface Document permits Sheet, OrderDocument {
  /** The whole document as it came, on one line. */
  String json();
}
