package sagwright.finish;

/**
 * What a plan or an order cannot be.
 *
 * @param key the path in the order's document, as {@code finish.weights[0].toMm}
 * @param whatIsWrong with it, in words
 */
public record FinishProblem(String key, String whatIsWrong) {}
