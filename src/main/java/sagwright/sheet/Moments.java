package sagwright.sheet;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;

/** Dates and times in documents, ISO 8601. */
final class Moments {
  private Moments() {}

  /** Whether a text is a date, or a date and time with or without its zone. */
  static boolean isMoment(String text) {
    try {
      return instantOf(text) != null;
    } catch (DateTimeException e) {
      return false;
    }
  }

  /**
   * The moment that a text means: a time without a zone is UTC's, a date its first moment there.
   *
   * @throws DateTimeException where the text is no moment
   */
  static Instant instantOf(String text) {
    if (!text.contains("T")) {
      return LocalDate.parse(text).atStartOfDay(ZoneOffset.UTC).toInstant();
    }
    TemporalAccessor moment =
        DateTimeFormatter.ISO_DATE_TIME.parseBest(text, ZonedDateTime::from, LocalDateTime::from);
    return moment instanceof ZonedDateTime zoned
        ? zoned.toInstant()
        : ((LocalDateTime) moment).toInstant(ZoneOffset.UTC);
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
