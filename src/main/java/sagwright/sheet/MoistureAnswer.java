package sagwright.sheet;

/** What {@code moisture} prints: docs/contract.md, section 10. */
public final class MoistureAnswer {
  private MoistureAnswer() {}

  public static String of(double equilibriumMoisturePercent) {
    return new JsonLine().put("equilibriumMoisturePercent", equilibriumMoisturePercent).toString();
  }
}
