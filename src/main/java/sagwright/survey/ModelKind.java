package sagwright.survey;

import java.util.Locale;

/** The four models of docs/contract.md, section 8. */
public enum ModelKind {
  /** One modulus. */
  ONE,
  /** One modulus, and the ratio r = E/G with it. */
  RATIO,
  /** The modulus runs straight from the shaft's tip end to its butt end. */
  STRAIGHT,
  /** The modulus is constant between borders. */
  PIECES;

  /** As a sheet's reader knows it: one, ratio, straight, pieces. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
