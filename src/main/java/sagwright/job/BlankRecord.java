package sagwright.job;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sagwright.sheet.JsonLine;
import sagwright.wood.Grain;
import sagwright.workshop.Blank;
import sagwright.workshop.BlankState;
import sagwright.workshop.CaliperEntry;
import sagwright.workshop.EndEntry;
import sagwright.workshop.Grade;
import sagwright.workshop.GrainEntry;
import sagwright.workshop.Note;
import sagwright.workshop.PromiseEntry;
import sagwright.workshop.Run;
import sagwright.workshop.StageEntry;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/**
 * All that a workshop knows of one blank; every list oldest first.
 *
 * @param end empty for a blank that is still there
 * @param changes by the number of each grade that followed another one for the same order: what
 *     came out otherwise, and why
 */
public record BlankRecord(
    Blank blank,
    BlankState state,
    Optional<EndEntry> end,
    List<CaliperEntry> caliperEntries,
    List<StageEntry> stages,
    List<Run> runs,
    List<Grade> grades,
    Map<Long, GradeChange> changes,
    List<GrainEntry> grains,
    List<PromiseEntry> promises,
    List<Note> notes) {
  public static BlankRecord of(Workshop workshop, String tag) throws WorkshopException {
    Blank blank = workshop.blanks().require(tag);
    List<Grade> grades = workshop.grades().of(blank);
    return new BlankRecord(
        blank,
        workshop.blanks().state(blank),
        workshop.blanks().end(blank),
        workshop.blanks().caliperEntries(blank),
        workshop.blanks().stages(blank),
        workshop.runs().of(blank),
        grades,
        changes(workshop, blank, grades),
        workshop.grains().of(blank),
        workshop.promises().of(blank),
        workshop.notes().of(blank));
  }

  private static Map<Long, GradeChange> changes(Workshop workshop, Blank blank, List<Grade> grades)
      throws WorkshopException {
    Map<Long, GradeChange> changes = new LinkedHashMap<>();
    Map<String, Grade> before = new HashMap<>();
    for (Grade grade : grades) {
      Grade older = before.put(grade.orderNumber(), grade);
      if (older != null) {
        changes.put(grade.id(), GradeChange.between(workshop, blank, older, grade));
      }
    }
    return changes;
  }

  /** On one line: docs/contract.md, section 7. */
  public String json() {
    return new JsonLine()
        .put("tag", blank.tag())
        .put("stage", state.stage())
        .put("promisedTo", state.promisedTo())
        .put("ended", state.endedWhy())
        .put("free", state.isFree())
        .putObjects("runs", runs.stream().map(BlankRecord::line).toList())
        .putObjects("grades", grades.stream().map(this::line).toList())
        .putObjects("caliperEntries", caliperEntries.stream().map(BlankRecord::line).toList())
        .putObjects(
            "stages",
            stages.stream()
                .map(s -> new JsonLine().put("at", s.at().toString()).put("stage", s.stage()))
                .toList())
        .putObjects("grain", grains.stream().map(BlankRecord::line).toList())
        .putObjects("promises", promises.stream().map(BlankRecord::line).toList())
        .putObjects(
            "notes",
            notes.stream()
                .map(
                    n ->
                        new JsonLine()
                            .put("at", n.at().toString())
                            .put("words", n.words())
                            .put("initials", n.initials()))
                .toList())
        .toString();
  }

  private static JsonLine line(Run run) {
    JsonLine json =
        new JsonLine()
            .put("run", run.id())
            .put("startedAt", run.startedAt())
            .put("origin", run.origin().name().toLowerCase(Locale.ROOT))
            .put("ending", run.ending());
    String answer = run.outcome().answer();
    for (String key : RUN_FIGURES) {
      json.put(key, answer == null ? null : JsonLine.parse(answer).number(key));
    }
    return json.putTexts(
            "warnings", answer == null ? List.of() : JsonLine.parse(answer).texts("warnings"))
        .put("noAnswer", run.outcome().noAnswer())
        .put("setAside", run.isSetAside())
        .put("setAsideWhy", run.setAsideWhy())
        .put("movedFrom", run.moved() == null ? null : run.moved().fromTag())
        .put("line", LineJson.of(run.line()));
  }

  private static final List<String> RUN_FIGURES =
      List.of(
          "stiffnessNPerMm",
          "stiffnessStdUncertaintyNPerMm",
          "shaftStiffnessNPerMm",
          "modulusMPa",
          "modulusStdUncertaintyMPa");

  private JsonLine line(Grade grade) {
    JsonLine answer = JsonLine.parse(grade.answer());
    GradeChange change = changes.get(grade.id());
    JsonLine line =
        new JsonLine()
            .put("gradeId", grade.id())
            .put("at", grade.at().toString())
            .put("order", grade.orderNumber())
            .put("grade", answer.text("grade"))
            .put("chanceWithinTolerance", answer.number("chanceWithinTolerance"))
            .put("stiffnessNPerMm", answer.number("stiffnessNPerMm"))
            .put("stiffnessStdUncertaintyNPerMm", answer.number("stiffnessStdUncertaintyNPerMm"))
            .put("program", grade.program())
            .put("initials", grade.initials());
    return change == null ? line : line.putTexts("because", change.because());
  }

  private static JsonLine line(CaliperEntry entry) {
    return new JsonLine()
        .put("at", entry.at().toString())
        .put("why", entry.why())
        .putJson("sheet", entry.document());
  }

  private static JsonLine line(GrainEntry entry) {
    Grain grain = entry.grain();
    return new JsonLine()
        .put("at", entry.at().toString())
        .put("linesPerCm", grain.linesPerCm())
        .put("runOut", grain.runOut() == null ? null : grain.runOut().inWords())
        .put("looks", grain.looks())
        .put("initials", entry.initials());
  }

  private static JsonLine line(PromiseEntry entry) {
    return new JsonLine()
        .put("at", entry.at().toString())
        .put("order", entry.orderNumber())
        .put("made", entry.isMade())
        .put("initials", entry.initials());
  }
}
