package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import sagwright.choose.Candidate;
import sagwright.sheet.SheetReader;
import sagwright.wood.SpeciesTable;
import sagwright.workshop.BlankState;
import sagwright.workshop.ShortRecord;
import sagwright.workshop.ShortShaft;
import sagwright.workshop.Workshop;
import sagwright.workshop.WorkshopException;

/** All blanks that are still to become something, ready to be held against orders. */
final class StandingBlanks {
  private final Workshop workshop;
  private final SheetReader reader;
  private final BlankModulus modulus;

  StandingBlanks(Workshop workshop, SpeciesTable species) {
    this.workshop = workshop;
    this.reader = new SheetReader(species);
    this.modulus = new BlankModulus(workshop, species);
  }

  /**
   * A blank that is neither finished nor ended, and no check rod.
   *
   * @param wood null where no run counts
   */
  record StandingBlank(ShortRecord kept, ShortShaft shaft, KnownWood wood) {
    Candidate candidate() {
      String tag = kept.blank().tag();
      return wood == null ? Candidate.untested(tag) : new Candidate(tag, wood.in(shaft));
    }

    boolean isFree() {
      return kept.state().isFree();
    }

    /**
     * @param order null for one that has no number
     */
    boolean isPromisedTo(String order) {
      return order != null && order.equals(kept.state().promisedTo());
    }
  }

  /** Free ones and promised ones. */
  List<StandingBlank> all() throws WorkshopException {
    return each(records(), (blank, sink) -> sink.accept(blank));
  }

  /** The same, not opened yet. */
  List<ShortRecord> records() throws WorkshopException {
    List<ShortRecord> standing = new ArrayList<>();
    for (ShortRecord kept : workshop.shortRecords(reader).all()) {
      BlankState state = kept.state();
      boolean isOver = state.endedWhy() != null || BlankState.FINISHED_CUE.equals(state.stage());
      if (!isOver && !state.isCheckRod()) {
        standing.add(kept);
      }
    }
    return standing;
  }

  /**
   * Opens records and makes something of each, on all cores at once.
   *
   * @param making hands what it makes of a blank to the sink, or leaves the blank out
   */
  <T> List<T> each(List<ShortRecord> records, BiConsumer<StandingBlank, Consumer<T>> making)
      throws WorkshopException {
    try {
      List<T> made =
          records.parallelStream()
              .<T>mapMulti((kept, sink) -> making.accept(opened(kept), sink))
              .toList();
      modulus.keepSurveys();
      return made;
    } catch (Unreadable e) {
      throw e.cause;
    }
  }

  private StandingBlank opened(ShortRecord kept) {
    try {
      Optional<KnownWood> wood = modulus.of(kept);
      return new StandingBlank(kept, kept.shaft(), wood.orElse(null));
    } catch (WorkshopException e) {
      throw new Unreadable(e);
    }
  }

  /** Carries a fault out of a stream. */
  private static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final WorkshopException cause;

    Unreadable(WorkshopException cause) {
      super(cause);
      this.cause = cause;
    }
  }
}
