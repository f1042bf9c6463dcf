package sagwright.bench;

/** Who a head says it is in its answer to {@code *IDN?}. */
public record HeadIdentity(String model, String serial, String firmware) {
  /** The answer itself, as the head sends it. */
  public String asAnswer() {
    return "SAGWRIGHT," + model + "," + serial + "," + firmware;
  }
}
