package sagwright.example;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import sagwright.wood.SpeciesTable;

/** Which blanks the example workshop has, and what their wood truly is. */
public final class ExampleRack {
  /** All of the example comes from this one number. */
  private static final long SEED = 20_260_302;

  static final List<String> VISITORS = List.of("V-01", "V-02", "V-03");

  private static final int DAYS_BETWEEN_BLANKS = 4;

  private static final String EUROPEAN_ASH = "European ash";
  private static final String WHITE_ASH = "white ash";
  private static final String MAPLE = "sugar maple";

  /** A lot of squares bought together; tags are the lot's number and the blank's. */
  private record Lot(int number, int boughtDaysAgo, List<Part> parts) {}

  /** So many blanks of a lot that have come to the same stage. */
  private record Part(int blanks, String species, Stage stage) {}

  private static final List<Lot> LOTS =
      List.of(
          new Lot(
              11,
              1500,
              List.of(
                  new Part(12, EUROPEAN_ASH, Stage.FINISHED_CUE),
                  new Part(6, EUROPEAN_ASH, Stage.NEAR_SIZE))),
          new Lot(
              12,
              1150,
              List.of(
                  new Part(8, EUROPEAN_ASH, Stage.PLANED),
                  new Part(13, EUROPEAN_ASH, Stage.NEAR_SIZE),
                  new Part(6, WHITE_ASH, Stage.NEAR_SIZE))),
          new Lot(
              13,
              820,
              List.of(
                  new Part(16, EUROPEAN_ASH, Stage.NEAR_SIZE),
                  new Part(8, MAPLE, Stage.NEAR_SIZE),
                  new Part(8, EUROPEAN_ASH, Stage.SECOND_TURNING))),
          new Lot(
              14,
              480,
              List.of(
                  new Part(14, EUROPEAN_ASH, Stage.SECOND_TURNING),
                  new Part(8, MAPLE, Stage.SECOND_TURNING),
                  new Part(9, EUROPEAN_ASH, Stage.ROUGHED))),
          new Lot(
              15,
              230,
              List.of(new Part(16, EUROPEAN_ASH, Stage.ROUGHED), new Part(8, MAPLE, Stage.SQUARE))),
          new Lot(16, 40, List.of(new Part(18, WHITE_ASH, Stage.SQUARE))));

  private final Map<String, ExampleBlank> blanks = new LinkedHashMap<>();
  private final Map<String, ExampleWood> visitors = new LinkedHashMap<>();

  public ExampleRack(SpeciesTable species) {
    for (Lot lot : LOTS) {
      int number = 0;
      for (Part part : lot.parts()) {
        for (int i = 0; i < part.blanks(); i++) {
          number++;
          String tag = String.format(Locale.ROOT, "%d-%03d", lot.number(), number);
          ExampleWood wood = ExampleWood.drawn(tag, species.find(part.species()).orElseThrow());
          blanks.put(
              tag,
              new ExampleBlank(
                  wood,
                  part.stage(),
                  lot.boughtDaysAgo(),
                  i * DAYS_BETWEEN_BLANKS,
                  stageDaysAgo(part.stage(), i)));
        }
      }
    }
    for (String tag : VISITORS) {
      visitors.put(tag, ExampleWood.drawn(tag, species.find(EUROPEAN_ASH).orElseThrow()));
    }
  }

  /** A cue that somebody brought along. */
  ExampleWood visitor(String tag) {
    return visitors.get(tag);
  }

  private static int stageDaysAgo(Stage stage, int i) {
    return switch (stage) {
      case PLANED -> 6 + 5 * i;
      case FINISHED_CUE -> 30 + 55 * i;
      default -> 0;
    };
  }

  /** Chance that always falls the same for what it is asked for. */
  static Random randomOf(String what) {
    // the first numbers of neighbouring seeds are alike: spread them
    return new Random((SEED * 31 + what.hashCode()) * 0x9E3779B97F4A7C15L);
  }

  List<ExampleBlank> blanks() {
    return new ArrayList<>(blanks.values());
  }

  /** What the wood of a blank truly is; empty for a tag that is not of this rack. */
  public Optional<ExampleWood> wood(String tag) {
    return Optional.ofNullable(blanks.get(tag))
        .map(ExampleBlank::wood)
        .or(() -> Optional.ofNullable(visitors.get(tag)));
  }

  /** The tags of all its blanks, and of visitors. */
  public List<String> tags() {
    List<String> tags = new ArrayList<>(blanks.keySet());
    tags.addAll(visitors.keySet());
    return tags;
  }
}
