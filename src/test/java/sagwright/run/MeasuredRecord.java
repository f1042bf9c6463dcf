package sagwright.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;

/** A strangers' record: src/test/resources/reference/data/measured, sources in its README. */
record MeasuredRecord(String name, Readings readings, double expectedNPerMm) {
  private static final String FOLDER = "/reference/data/measured/";
  static final ReadingUncertainty STATED = new ReadingUncertainty(0.02, 0.005);
  static final List<String> STRIPS =
      Stream.of("laminate_strip_1a 1b 3c 4c", "mdf_strip_mdf1 mdf2 mdf3 mdf4 mdf5 mdf7 mdf8")
          .flatMap(MeasuredRecord::family)
          .toList();
  static final List<String> PINES =
      Stream.of("pine_rod_1in_square_ball", "pine_stringer_1909_1a 1b 2a 3a 5a 5b")
          .flatMap(MeasuredRecord::family)
          .toList();

  private static Stream<String> family(String names) {
    String[] words = names.split(" ");
    String stem = words[0].substring(0, words[0].lastIndexOf('_') + 1);
    return Stream.concat(Stream.of(words[0]), Stream.of(words).skip(1).map(w -> stem + w));
  }

  static MeasuredRecord of(String name) {
    JsonNode sheet = json("sheets/" + name + ".json");
    JsonNode run = sheet.get("run");
    JsonNode hand = sheet.get("handRead");
    Readings readings =
        run != null
            ? new Samples(
                numbers(run, "timeS"), numbers(run, "loadN"), numbers(run, "deflectionMm"))
            : new HandReadings(numbers(hand, "loadN"), numbers(hand, "deflectionMm"));
    return new MeasuredRecord(
        name, readings, sheet.get("x-expect").get("stiffnessNPerMm").asDouble());
  }

  /** The record beside the sheet: geometry, the authors' result, what was worked out again. */
  JsonNode story() {
    return json(name + ".json");
  }

  private static JsonNode json(String path) {
    try (InputStream in = MeasuredRecord.class.getResourceAsStream(FOLDER + path)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new IllegalStateException(path, e);
    }
  }

  private static double[] numbers(JsonNode node, String key) {
    double[] numbers = new double[node.get(key).size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = node.get(key).get(i).asDouble();
    }
    return numbers;
  }
}
