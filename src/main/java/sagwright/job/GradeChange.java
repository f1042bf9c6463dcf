package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sagwright.sheet.JsonLine;
import sagwright.workshop.Blank;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * How a grade differs from the one before it for the same order, and why.
 *
 * @param wasChance that all that is asked lies within its tolerance, 0 to 1
 * @param because one reason each, as "run 7 is 2.0 % softer"; never empty
 */
public record GradeChange(
    double wasChance, double isChance, String wasWord, String isWord, List<String> because) {
  public GradeChange {
    because = List.copyOf(because);
  }

  /**
   * @param before an older grade of this blank for this order
   */
  public static GradeChange between(Workshop workshop, Blank blank, Grade before, Grade now)
      throws WorkshopException {
    JsonLine was = JsonLine.parse(before.answer());
    JsonLine is = JsonLine.parse(now.answer());
    List<String> because = new ArrayList<>();
    if (before.basis().orderVersionId() != now.basis().orderVersionId()) {
      because.addAll(
          OrderChange.between(
              workshop.orders().version(before.basis().orderVersionId()),
              workshop.orders().version(now.basis().orderVersionId())));
    }
    because.addAll(RunsChange.between(workshop, before.basis().runIds(), now.basis().runIds()));
    if (before.basis().caliperEntryId() != now.basis().caliperEntryId()) {
      List<CaliperEntry> entries = workshop.blanks().caliperEntries(blank);
      because.addAll(
          CaliperChange.between(
              entry(entries, before.basis().caliperEntryId()),
              entry(entries, now.basis().caliperEntryId())));
    }
    if (before.basis().sureness() != now.basis().sureness()) {
      because.add(
          "sure from "
              + PlainNumber.of(100 * now.basis().sureness())
              + " in 100, not from "
              + PlainNumber.of(100 * before.basis().sureness()));
    }
    if (because.isEmpty()) {
      because.addAll(ofWarnings(was.texts("warnings"), is.texts("warnings")));
    }
    if (because.isEmpty()) {
      because.add(
          before.program().equals(now.program())
              ? "nothing has changed that it rests on"
              : "worked out by version " + now.program() + ", not " + before.program());
    }
    return new GradeChange(
        was.number("chanceOfAll"),
        is.number("chanceOfAll"),
        was.text("grade"),
        is.text("grade"),
        because);
  }

  /** Empty for an entry that was taken back since. */
  private static Optional<CaliperEntry> entry(List<CaliperEntry> entries, long id) {
    return entries.stream().filter(e -> e.id() == id).findFirst();
  }

  private static List<String> ofWarnings(List<String> was, List<String> is) {
    List<String> because = new ArrayList<>();
    is.stream().filter(w -> !was.contains(w)).forEach(because::add);
    was.stream().filter(w -> !is.contains(w)).forEach(w -> because.add("no longer: " + w));
    return because;
  }
}
