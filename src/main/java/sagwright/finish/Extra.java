package sagwright.finish;

/**
 * A point of mass, as a joint is.
 *
 * @param name what it is, null where left out
 * @param xMm from the tip end of the finished shaft
 */
public record Extra(String name, double xMm, double massG) {}
