package sagwright.job;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Moments for people, by the calendar of the place where the program runs. */
public final class Days {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

  private Days() {}

  /** "2 Mar 2026". */
  public static String day(Instant instant) {
    return DAY.format(instant.atZone(ZoneId.systemDefault()));
  }

  /** Whether both lie on one day. */
  static boolean areOneDay(Instant one, Instant other) {
    ZoneId here = ZoneId.systemDefault();
    return one.atZone(here).toLocalDate().equals(other.atZone(here).toLocalDate());
  }

  /** "4 h ago", as a clock on the wall would say it. */
  public static String ago(Instant then, Instant now) {
    Duration ago = Duration.between(then, now);
    if (ago.toMinutes() < 2) {
      return "just now";
    }
    if (ago.toMinutes() < 60) {
      return ago.toMinutes() + " min ago";
    }
    if (ago.toHours() < 48) {
      return ago.toHours() + " h ago";
    }
    return ago.toDays() + " days ago";
  }
}
