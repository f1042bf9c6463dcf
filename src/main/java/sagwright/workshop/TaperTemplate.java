package sagwright.workshop;

/**
 * A taper that the shop keeps.
 *
 * @param document its length and its knots, as an order's finish has them
 */
public record TaperTemplate(long id, String name, String document) {}
