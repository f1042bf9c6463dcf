package sagwright.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;

/** Dates and times in documents, ISO 8601. */
final class Moments {
  private Moments() {}

  /** Whether a text is a date, or a date and time with or without its zone. */
  static boolean isMoment(String text) {
    try {
      DateTimeFormatter format =
          text.contains("T") ? DateTimeFormatter.ISO_DATE_TIME : DateTimeFormatter.ISO_DATE;
      return format.parse(text) != null;
    } catch (DateTimeException e) {
      return false;
    }
  }

  /** Whether a text is a plain date as 2026-06-30. */
  static boolean isDate(String text) {
    try {
      return LocalDate.parse(text) != null;
    } catch (DateTimeException e) {
      return false;
    }
  }
}
