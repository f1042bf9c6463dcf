package sagwright.wood;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The woods that the program knows, in the order of its table. Immutable. */
public final class SpeciesTable {
  private static final String RESOURCE = "species.csv";
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreSurroundingSpaces(true)
          .get();

  private final List<Species> all;
  private final Map<String, Species> byName = new LinkedHashMap<>();

  private SpeciesTable(List<Species> all) {
    this.all = List.copyOf(all);
    for (Species species : all) {
      if (byName.putIfAbsent(key(species.name()), species) != null) {
        throw new IllegalStateException("two rows for " + species.name());
      }
    }
  }

  /** The table that comes with the program; the sources of its values stand at its head. */
  public static SpeciesTable published() {
    try (InputStream in = SpeciesTable.class.getResourceAsStream(RESOURCE);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8);
        CSVParser rows = FORMAT.parse(reader)) {
      List<Species> all = new ArrayList<>();
      for (CSVRecord row : rows) {
        all.add(species(row));
      }
      return new SpeciesTable(all);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public List<Species> all() {
    return all;
  }

  /**
   * The species of that name, matched exactly but for case.
   *
   * @param name null where a blank's species is not known; then empty
   */
  public Optional<Species> find(String name) {
    return name == null ? Optional.empty() : Optional.ofNullable(byName.get(key(name)));
  }

  private static Species species(CSVRecord row) {
    return new Species(
        row.get("species"),
        row.get("latin"),
        number(row, "density_12pct_kg_m3"),
        number(row, "modulus_12pct_MPa"),
        number(row, "bending_strength_12pct_MPa"),
        number(row, "modulus_to_shear_ratio"),
        number(row, "ratio_12_to_green"),
        number(row, "intersection_moisture_percent"),
        row.get("basis"));
  }

  private static Double number(CSVRecord row, String column) {
    String cell = row.get(column);
    return cell.isEmpty() ? null : Double.valueOf(cell);
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
