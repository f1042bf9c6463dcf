package sagwright.screen.rack;

import java.util.List;
import sagwright.beam.Taper;
import sagwright.screen.ShopUnits;
import sagwright.wood.Grain;

/**
 * All that the rack shows at one moment. Immutable.
 *
 * @param blanks every blank, newest first, also those that are no more
 * @param open the record that was asked for, null for none
 * @param species names to choose from
 * @param stages names to choose from, in the order in which a blank passes them
 * @param said what was done, one line; empty for nothing
 */
public record RackView(
    List<Row> blanks,
    Opened open,
    List<String> species,
    List<String> stages,
    ShopUnits units,
    String said) {
  public RackView {
    blanks = List.copyOf(blanks);
    species = List.copyOf(species);
    stages = List.copyOf(stages);
  }

  /**
   * A blank in the list. Figures are null where there are none.
   *
   * @param stiffnessNPerMm of the shaft alone, newest kept answer
   * @param tested day of the newest run, ISO 8601; empty for none
   * @param promisedTo number of an order; empty for none
   * @param grain {@link Grain#UNSEEN} where nobody has looked
   * @param seasoning a few words
   * @param endedWhy empty for a blank that is still there
   * @param words all that the filter looks into, in lower case
   */
  public record Row(
      String tag,
      String species,
      String stage,
      Double massG,
      Double stiffnessNPerMm,
      Double modulusGPa,
      String tested,
      String promisedTo,
      Grain grain,
      String seasoning,
      String endedWhy,
      String words) {
    boolean isEnded() {
      return !endedWhy.isEmpty();
    }
  }

  /**
   * The record of one blank.
   *
   * @param details one line beside its tag
   * @param wood how it has seasoned and how its grain looks, one line
   * @param endedWhy empty for a blank that is still there
   * @param taper as measured last
   * @param entry the same as it was written down, to start newer measurements from
   * @param events oldest first
   */
  public record Opened(
      String tag,
      String details,
      String wood,
      String endedWhy,
      Taper taper,
      BlankEntry entry,
      List<Event> events) {
    public Opened {
      events = List.copyOf(events);
    }

    boolean isEnded() {
      return !endedWhy.isEmpty();
    }
  }

  /**
   * Something on the record.
   *
   * @param day as it is to be read, "3 Mar 2026"
   * @param what one word or two: entered, weighed, tested, graded …
   * @param figures what it gave, as "3.137 ± 0.012 N/mm"
   * @param details one line more; may be empty
   * @param isSetAside kept, but does not count
   */
  public record Event(
      String day, String what, String figures, String details, boolean isSetAside) {}
}
