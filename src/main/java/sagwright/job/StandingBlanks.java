package sagwright.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
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
  private static final int BATCH = 250;

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
    return each((blank, sink) -> sink.accept(blank));
  }

  /**
   * What is made of each: while records are still being read, other cores make it of those that
   * have been.
   *
   * @param making hands what it makes of a blank to the sink, or leaves the blank out
   */
  <T> List<T> each(BiConsumer<StandingBlank, Consumer<T>> making) throws WorkshopException {
    List<ForkJoinTask<List<T>>> batches = new ArrayList<>();
    List<ShortRecord> read = new ArrayList<>(BATCH);
    workshop
        .shortRecords(reader)
        .forEach(
            kept -> {
              if (isStanding(kept.state())) {
                read.add(kept);
              }
              if (read.size() == BATCH) {
                batches.add(begin(List.copyOf(read), making));
                read.clear();
              }
            });
    batches.add(begin(read, making));
    try {
      List<T> made = new ArrayList<>();
      batches.forEach(batch -> made.addAll(batch.join()));
      modulus.keepSurveys();
      return made;
    } catch (Unreadable e) {
      throw e.cause;
    }
  }

  private static boolean isStanding(BlankState state) {
    boolean isOver = state.endedWhy() != null || BlankState.FINISHED_CUE.equals(state.stage());
    return !isOver && !state.isCheckRod();
  }

  private <T> ForkJoinTask<List<T>> begin(
      List<ShortRecord> records, BiConsumer<StandingBlank, Consumer<T>> making) {
    return ForkJoinPool.commonPool()
        .submit(
            () -> {
              List<T> made = new ArrayList<>(records.size());
              for (ShortRecord kept : records) {
                making.accept(opened(kept), made::add);
              }
              return made;
            });
  }

  private StandingBlank opened(ShortRecord kept) {
    try {
      Optional<KnownWood> wood = modulus.of(kept);
      return new StandingBlank(kept, kept.shaft(), wood.orElse(null));
    } catch (WorkshopException e) {
      throw new Unreadable(e);
    }
  }

  /** Carries a fault from another thread. */
  private static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final WorkshopException cause;

    Unreadable(WorkshopException cause) {
      super(cause);
      this.cause = cause;
    }
  }
}
