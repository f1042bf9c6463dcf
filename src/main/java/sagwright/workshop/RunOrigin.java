package sagwright.workshop;

import java.util.Locale;

/** Where a run came from. */
public enum RunOrigin {
  /** Recorded from a bench head. */
  BENCH,
  /** Typed in by hand. */
  TYPED,
  /** Brought in as a sheet. */
  IMPORTED;

  String stored() {
    return name().toLowerCase(Locale.ROOT);
  }

  static RunOrigin of(String stored) {
    return valueOf(stored.toUpperCase(Locale.ROOT));
  }
}
