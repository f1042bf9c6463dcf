package sagwright.workshop;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What of a blank's record is needed to choose among thousands. */
public final class ShortRecord {
  private final Blank blank;
  private final BlankState state;
  private final long caliperEntryId;
  private final Supplier<ShortShaft> shaft;
  private final List<ShortRun> counting;
  private final String surveyedWood;

  /**
   * @param shaft by the newest caliper entry; unpacked by whoever asks, on any thread
   * @param counting the runs that count, oldest first
   * @param surveyedWood what was kept of a survey of exactly their answers; null where nothing was
   */
  ShortRecord(
      Blank blank,
      BlankState state,
      long caliperEntryId,
      Supplier<ShortShaft> shaft,
      List<ShortRun> counting,
      String surveyedWood) {
    this.blank = blank;
    this.state = state;
    this.caliperEntryId = caliperEntryId;
    this.shaft = shaft;
    this.counting = List.copyOf(counting);
    this.surveyedWood = surveyedWood;
  }

  public Blank blank() {
    return blank;
  }

  public BlankState state() {
    return state;
  }

  /** The newest caliper entry's number. */
  public long caliperEntryId() {
    return caliperEntryId;
  }

  /** By the newest caliper entry; worked out at each call. */
  public ShortShaft shaft() {
    return shaft.get();
  }

  /** The runs that count, oldest first. */
  public List<ShortRun> counting() {
    return counting;
  }

  /** What was kept of a survey of exactly the answers of the runs that count. */
  public Optional<String> surveyedWood() {
    return Optional.ofNullable(surveyedWood);
  }

  /** Names the answers of all the runs that count. */
  public String basis() {
    return basis(counting);
  }

  static String basis(List<ShortRun> counting) {
    return counting.stream()
        .map(run -> Long.toString(run.evaluationId()))
        .collect(Collectors.joining(" "));
  }
}
