package sagwright.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sagwright.beam.Taper;
import sagwright.sheet.BadDocumentException;
import sagwright.sheet.TaperText;
import sagwright.workshop.Action;
import sagwright.workshop.TaperTemplate;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** Keeps tapers to be used again. */
public final class KeepTapers {
  private final Workshop workshop;
  private final Set<Long> ours = new HashSet<>();

  public KeepTapers(Workshop workshop) {
    this.workshop = workshop;
  }

  /** A taper by its name. */
  public record KeptTaper(long id, String name, Taper taper) {}

  /** All, by name. */
  public List<KeptTaper> all() throws WorkshopException {
    List<KeptTaper> kept = new ArrayList<>();
    for (TaperTemplate template : workshop.taperTemplates().all()) {
      try {
        Taper taper = TaperText.read(template.document());
        kept.add(new KeptTaper(template.id(), template.name(), taper));
      } catch (BadDocumentException e) {
        throw new WorkshopException("the taper " + template.name() + ": " + e.getMessage());
      }
    }
    return kept;
  }

  /**
   * Keeps a taper under a name of the shop's own.
   *
   * @param taper round, its first knot at 0 and its last at its length
   */
  public void keep(String name, Taper taper) throws WorkshopException {
    workshop.taperTemplates().keep(named(name), TaperText.write(taper));
    noteLast();
  }

  public void rename(long id, String name) throws WorkshopException {
    workshop.taperTemplates().rename(template(id), named(name));
    noteLast();
  }

  public void delete(long id) throws WorkshopException {
    workshop.taperTemplates().delete(template(id));
    noteLast();
  }

  private void noteLast() throws WorkshopException {
    workshop.actions().lastUndoable().ifPresent(action -> ours.add(action.id()));
  }

  /**
   * Takes back what was done last to a taper from here, unless something else was done since.
   *
   * @throws WorkshopException also where there is nothing of ours to take back
   */
  public void undo() throws WorkshopException {
    Optional<Action> last = workshop.actions().lastUndoable();
    if (last.isEmpty() || !ours.contains(last.get().id())) {
      throw new WorkshopException(
          last.isEmpty()
              ? "there is nothing to take back"
              : "no taper: what was done last is \"" + last.get().what() + "\"");
    }
    workshop.actions().undoLast();
  }

  private TaperTemplate template(long id) throws WorkshopException {
    for (TaperTemplate template : workshop.taperTemplates().all()) {
      if (template.id() == id) {
        return template;
      }
    }
    throw new WorkshopException("that taper is no longer kept");
  }

  /** It begins with a letter, so that it can be typed where a length is asked for. */
  private static String named(String name) throws WorkshopException {
    String plain = name.strip();
    if (plain.isEmpty() || !Character.isLetter(plain.codePointAt(0))) {
      throw new WorkshopException("a taper's name begins with a letter");
    }
    return plain;
  }
}
