package sagwright.screen.checks;

import java.math.BigDecimal;
import sagwright.job.Signature;
import sagwright.screen.ComplaintException;

/** Plain numbers as they are typed here, without a unit; a complaint names the field. */
final class Numbers {
  private Numbers() {}

  static double number(String field, String text) throws ComplaintException {
    String plain = text.trim().replace('\u2212', '-').replace(',', '.').replace(" ", "");
    try {
      return new BigDecimal(plain).doubleValue();
    } catch (NumberFormatException e) {
      throw new ComplaintException(
          field + ": " + (plain.isEmpty() ? "nothing is typed" : text.trim() + " is no number"));
    }
  }

  static double above0(String field, String text) throws ComplaintException {
    double number = number(field, text);
    if (!(number > 0)) {
      throw new ComplaintException(field + ": " + text.trim() + " is not above 0");
    }
    return number;
  }

  /** Null where nothing is typed. */
  static Double optional(String field, String text) throws ComplaintException {
    return text.isBlank() ? null : number(field, text);
  }

  static Signature signature(String initials, String days) throws ComplaintException {
    double number = number("holds for", days);
    if (number != Math.rint(number)) {
      throw new ComplaintException("holds for: whole days");
    }
    return new Signature(initials.trim(), (int) Math.min(number, Integer.MAX_VALUE));
  }
}
