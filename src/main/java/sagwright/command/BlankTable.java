package sagwright.command;

import java.util.stream.Collectors;
import sagwright.job.BlankRecord;
import sagwright.job.GradeChange;
import sagwright.quantity.Figures;
import sagwright.sheet.JsonLine;
import sagwright.uncertainty.Estimate;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.Note;
import sagwright.workshop.Run;
import sagwright.workshop.StageEntry;

/** A blank's record as a person reads it; every ± is 95 %. */
final class BlankTable {
  private BlankTable() {}

  static String of(BlankRecord blankRecord) {
    TextTable table = new TextTable();
    table.title(blankRecord.blank().tag(), "± is 95 %");
    if (!blankRecord.stages().isEmpty()) {
      table.note(
          "stages: "
              + blankRecord.stages().stream()
                  .map(StageEntry::stage)
                  .collect(Collectors.joining(", ")));
    }
    if (blankRecord.state().promisedTo() != null) {
      table.note("promised to order " + blankRecord.state().promisedTo());
    }
    if (blankRecord.state().endedWhy() != null) {
      table.note("ended: " + blankRecord.state().endedWhy());
    }
    for (CaliperEntry entry : blankRecord.caliperEntries()) {
      table.note(day(entry.at().toString()) + "  measured: " + entry.why());
    }
    for (Run run : blankRecord.runs()) {
      add(table, run);
    }
    for (Grade grade : blankRecord.grades()) {
      add(table, grade);
      GradeChange change = blankRecord.changes().get(grade.id());
      if (change != null) {
        table.note(
            "  "
                + Figures.chanceChange(
                    change.wasChance(), change.isChance(), grade.basis().sureness())
                + ": "
                + String.join("; ", change.because()));
      }
    }
    for (Note note : blankRecord.notes()) {
      table.note(day(note.at().toString()) + "  note: " + note.words());
    }
    return table.toString().stripTrailing();
  }

  private static void add(TextTable table, Run run) {
    String label = day(run.startedAt()) + "  run " + run.id();
    if (run.outcome().answer() == null) {
      table.note(label + ": no answer, " + run.outcome().noAnswer());
      return;
    }
    JsonLine answer = JsonLine.parse(run.outcome().answer());
    table.row(
        label + (run.isSetAside() ? " (set aside)" : ""),
        withPlusMinus(answer, "stiffnessNPerMm", "stiffnessStdUncertaintyNPerMm", 1),
        "N/mm  modulus "
            + withPlusMinus(answer, "modulusMPa", "modulusStdUncertaintyMPa", 1000)
            + " GPa");
  }

  private static void add(TextTable table, Grade grade) {
    JsonLine answer = JsonLine.parse(grade.answer());
    table.row(
        day(grade.at().toString()) + "  for " + grade.orderNumber(),
        withPlusMinus(answer, "stiffnessNPerMm", "stiffnessStdUncertaintyNPerMm", 1),
        "N/mm  "
            + answer.text("grade")
            + ", "
            + Figures.chancePercent(
                answer.number("chanceWithinTolerance"), grade.basis().sureness())
            + " in 100 inside");
  }

  private static String withPlusMinus(
      JsonLine answer, String valueKey, String uncertaintyKey, double divisor) {
    return Figures.withPlusMinus(
        answer.number(valueKey) / divisor,
        Estimate.COVERAGE_FACTOR_95 * answer.number(uncertaintyKey) / divisor);
  }

  private static String day(String moment) {
    return moment.length() > 10 ? moment.substring(0, 10) : moment;
  }
}
