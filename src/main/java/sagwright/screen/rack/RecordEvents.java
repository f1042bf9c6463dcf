package sagwright.screen.rack;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import sagwright.job.BlankRecord;
import sagwright.job.GradeChange;
import sagwright.job.RecordFigures;
import sagwright.job.RecordFigures.Measured;
import sagwright.quantity.Figures;
import sagwright.screen.ShopUnits;
import sagwright.screen.WoodWords;
import sagwright.screen.finish.GradeWords;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.GrainEntry;
import sagwright.workshop.Note;
import sagwright.workshop.PromiseEntry;
import sagwright.workshop.Run;
import sagwright.workshop.StageEntry;

/** The record of a blank as a row of events, oldest first. */
final class RecordEvents {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private RecordEvents() {}

  private static final String TESTED = "tested";
  private static final String GRADED = "graded";

  /** What tells how stiff a blank is. */
  private static final Set<String> TELLING = Set.of(TESTED, GRADED);

  private record Dated(Instant at, RackView.Event event) {}

  static List<RackView.Event> of(BlankRecord record, ShopUnits units) {
    List<Dated> events = new ArrayList<>();
    calipers(events, record);
    for (GrainEntry entry : record.grains()) {
      String grain = WoodWords.grain(entry.grain(), units);
      String looks = entry.grain().looks() == null ? "" : entry.grain().looks();
      boolean isBare = grain.isEmpty();
      add(events, entry.at(), "grain", isBare ? looks : grain, isBare ? "" : looks, false);
    }
    for (PromiseEntry entry : record.promises()) {
      String what = entry.isMade() ? "promised" : "taken back";
      String details = entry.initials() == null ? "" : "by " + entry.initials();
      add(events, entry.at(), what, "to " + entry.orderNumber(), details, false);
    }
    for (StageEntry stage : record.stages()) {
      add(events, stage.at(), "stage", stage.stage(), "", false);
    }
    for (Run run : record.runs()) {
      add(
          events,
          instant(run.startedAt()),
          TESTED,
          figures(run),
          details(run),
          run.isSetAside() || run.outcome().answer() == null);
    }
    for (Grade grade : record.grades()) {
      RecordFigures.Graded graded = RecordFigures.of(grade);
      add(
          events,
          grade.at(),
          GRADED,
          graded.word()
              + ", "
              + Figures.chancePercent(graded.chance(), grade.basis().sureness())
              + " in 100",
          details(grade, record.changes().get(grade.id())),
          false);
    }
    for (Note note : record.notes()) {
      add(events, note.at(), "note", note.words(), note.initials(), false);
    }
    record.end().ifPresent(end -> add(events, end.at(), "ended", end.why(), "", false));
    return events.stream().sorted(Comparator.comparing(Dated::at)).map(Dated::event).toList();
  }

  /**
   * The same where the hand is to guess first: that it was tested and graded, not what came out.
   */
  static List<RackView.Event> veiled(List<RackView.Event> events) {
    return events.stream()
        .map(event -> TELLING.contains(event.what()) ? veiled(event) : event)
        .toList();
  }

  private static RackView.Event veiled(RackView.Event event) {
    return new RackView.Event(
        event.day(), event.what(), "first the hand: the guess is awaited", "", event.isSetAside());
  }

  private static String details(Grade grade, GradeChange change) {
    String order = "for " + grade.orderNumber();
    String signed = grade.initials() == null ? order : order + ", " + grade.initials();
    return change == null
        ? signed
        : signed + ": " + GradeWords.of(change, grade.basis().sureness());
  }

  private static void calipers(List<Dated> events, BlankRecord record) {
    Measured before = null;
    for (CaliperEntry entry : record.caliperEntries()) {
      Measured now = RecordFigures.of(entry);
      boolean isFirst = before == null;
      String details = isFirst && entry.why().equals("entered") ? "" : entry.why();
      add(
          events,
          entry.at(),
          CaliperEvents.what(before, now),
          CaliperEvents.figures(before, now),
          details,
          false);
      before = now;
    }
  }

  private static String figures(Run run) {
    if (run.outcome().answer() == null) {
      return "no answer";
    }
    Estimate stiffness = RecordFigures.stiffness(run);
    return Figures.withPlusMinus(stiffness.value(), stiffness.halfWidth95()) + " N/mm";
  }

  private static String details(Run run) {
    List<String> parts = new ArrayList<>();
    parts.add("run " + run.id());
    if (run.outcome().answer() != null) {
      Estimate modulus = RecordFigures.modulusMPa(run);
      parts.add(
          Figures.withPlusMinus(modulus.value() / 1000, modulus.halfWidth95() / 1000) + " GPa");
    }
    if (run.setAsideWhy() != null) {
      parts.add("set aside: " + run.setAsideWhy());
    } else if (run.outcome().noAnswer() != null) {
      parts.add(run.outcome().noAnswer());
    }
    if (run.moved() != null) {
      parts.add("moved from " + run.moved().fromTag());
    }
    return String.join(", ", parts);
  }

  private static void add(
      List<Dated> events,
      Instant at,
      String what,
      String figures,
      String details,
      boolean isSetAside) {
    String day = DAY.format(LocalDate.ofInstant(at, ZoneId.systemDefault()));
    events.add(
        new Dated(
            at,
            new RackView.Event(day, what, figures, details == null ? "" : details, isSetAside)));
  }

  private static Instant instant(String startedAt) {
    try {
      return OffsetDateTime.parse(startedAt).toInstant();
    } catch (DateTimeParseException e) {
      return LocalDate.parse(startedAt.substring(0, 10)).atStartOfDay(ZoneOffset.UTC).toInstant();
    }
  }
}
