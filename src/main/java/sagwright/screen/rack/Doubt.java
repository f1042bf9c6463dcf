package sagwright.screen.rack;

/**
 * Something typed that can hardly be, but may be true: it is asked about before it is kept.
 *
 * @param words what stands out, one line without a full stop
 * @param field the one that it is about, as complaints call it
 */
record Doubt(String words, String field) {}
