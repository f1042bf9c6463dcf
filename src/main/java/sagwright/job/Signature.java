package sagwright.job;

import sagwright.workshop.WorkshopException;

/**
 * Who stands for a calibration and how long it is to hold.
 *
 * @param initials of whose hand made it
 * @param validDays from the day it was made
 */
public record Signature(String initials, int validDays) {
  /** A year (common practice, no source). */
  public static final int USUAL_VALID_DAYS = 365;

  private static final int MOST_VALID_DAYS = 36_500;
  private static final int MOST_INITIALS = 12;

  /** This signature where it can be one; else the complaint is one line for people. */
  public Signature require() throws WorkshopException {
    requireInitials(initials);
    if (validDays < 1 || validDays > MOST_VALID_DAYS) {
      throw new WorkshopException("holds for: 1 to " + MOST_VALID_DAYS + " days");
    }
    return this;
  }

  /** Initials that can be signed with; else the complaint is one line for people. */
  public static String requireInitials(String initials) throws WorkshopException {
    if (initials.isBlank() || initials.length() > MOST_INITIALS) {
      throw new WorkshopException(
          "initials: sign with one to " + MOST_INITIALS + " letters, so that it has a maker");
    }
    return initials;
  }
}
