package sagwright.job;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import sagwright.job.DueCheck.Subject;
import sagwright.job.DueCheck.Urgency;
import sagwright.sheet.JsonLine;

/** What is due and what is out, the most urgent first. */
public final class DueChecks {
  private static final Duration SOON = Duration.ofDays(30);

  private final CalibrationInForce inForce;
  private final CheckRodState rod;
  private final InstantSource clock;
  private final boolean isPractice;

  /**
   * @param isPractice whether the bench works without any calibration of the workshop's
   */
  public DueChecks(
      CalibrationInForce inForce, CheckRodState rod, InstantSource clock, boolean isPractice) {
    this.isPractice = isPractice;
    this.inForce = inForce;
    this.rod = rod;
    this.clock = clock;
  }

  public List<DueCheck> now() {
    CalibrationInForce.Standing standing = inForce.standing();
    List<DueCheck> all = new ArrayList<>();
    all.add(rod());
    all.add(
        part(standing, CalibrationPart.LOAD, Subject.LOAD, "hang known masses, up and down again"));
    all.add(
        part(standing, CalibrationPart.GAUGE, Subject.GAUGE, "lay gauge blocks under the stem"));
    all.add(
        once(
            standing,
            CalibrationPart.SPRING,
            Subject.SPRING,
            "not measured: taken as 0",
            "push the stem onto a letter balance"));
    all.add(
        once(
            standing,
            CalibrationPart.FRAME,
            Subject.FRAME,
            "not measured: 0.002 mm/N is taken",
            "test a stout steel bar"));
    all.sort(Comparator.comparing(DueCheck::urgency));
    return all;
  }

  private DueCheck rod() {
    RodStanding now = rod.standing();
    if (!now.hasRod()) {
      return new DueCheck(Subject.ROD, Urgency.ADVISED, now.inWords(), "enter a ground steel rod");
    }
    if (now.isOut()) {
      return new DueCheck(Subject.ROD, Urgency.OUT, now.inWords(), now.lookAt());
    }
    String when = now.wasSeen() ? ", " + Days.ago(now.newest().at(), clock.instant()) : "";
    return rod.wasSeenToday()
        ? new DueCheck(Subject.ROD, Urgency.GOOD, now.inWords() + when, now.lookAt())
        : new DueCheck(
            Subject.ROD,
            Urgency.DUE,
            now.inWords() + when,
            "test it today, before the first shaft");
  }

  /** Load and gauge hold so many days. */
  private DueCheck part(
      CalibrationInForce.Standing standing, CalibrationPart part, Subject subject, String how) {
    CalibrationPart.Made made = standing.made().get(part);
    if (made == null) {
      return isPractice
          ? new DueCheck(
              subject, Urgency.ADVISED, "never calibrated; the practice bench needs none", how)
          : new DueCheck(subject, Urgency.DUE, "never calibrated: no test without it", how);
    }
    Instant until = made.at().plus(Duration.ofDays(standing.calibration().validDays()));
    String standsAs = inWords(standing, part, made);
    Instant now = clock.instant();
    if (now.isAfter(until)) {
      return new DueCheck(subject, Urgency.DUE, standsAs + ", held until " + Days.day(until), how);
    }
    boolean soon = now.plus(SOON).isAfter(until);
    return new DueCheck(
        subject,
        soon ? Urgency.SOON : Urgency.GOOD,
        standsAs + ", holds until " + Days.day(until),
        soon ? how : "");
  }

  /** Spring and frame stay as they are until something is changed. */
  private static DueCheck once(
      CalibrationInForce.Standing standing,
      CalibrationPart part,
      Subject subject,
      String without,
      String how) {
    CalibrationPart.Made made = standing.made().get(part);
    return made == null
        ? new DueCheck(subject, Urgency.ADVISED, without, how)
        : new DueCheck(subject, Urgency.GOOD, inWords(standing, part, made), "");
  }

  /** "class 0.5, 2 Mar 2026 by KM". */
  private static String inWords(
      CalibrationInForce.Standing standing, CalibrationPart part, CalibrationPart.Made made) {
    JsonLine behind = JsonLine.parse(standing.document()).objectOrNull(part.key());
    Double number = behind == null ? null : behind.number("class");
    String forceClass = number == null ? "" : "class " + classInWords(number) + ", ";
    String by = made.by() == null ? "" : " by " + made.by();
    return forceClass + Days.day(made.at()) + by;
  }

  private static String classInWords(double number) {
    return number == Math.rint(number)
        ? String.format(Locale.ROOT, "%.0f", number)
        : String.format(Locale.ROOT, "%.1f", number);
  }
}
